import { openSteps, pairsOfSlips, singleSlips } from './catalogue.ts';
import { type Wrong, plainSlips } from './plain-slips.ts';
import type { Work } from './reach.ts';
import { type Asked, rowSlips } from './row-slips.ts';
import type { Explanation } from './slip.ts';

/**
 * What explains a wrong value: every single slip that gives it; where none does, two at once in steps left blank;
 * where none does, one row of a table. Nothing where nothing fits.
 */
export function explain(work: Work, asked: Asked, wrong: Wrong): Explanation[] {
  const open = openSteps(work, asked.id);
  const single = [...singleSlips(work, asked, open), ...plainSlips(wrong).map((slip) => ({ ...slip, at: asked.id }))];
  if (single.length > 0) return single;
  const pairs = pairsOfSlips(work, asked, open);
  return pairs.length > 0 ? pairs : rowSlips(work, asked, open);
}
