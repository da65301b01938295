import type { Interval } from '../quantities/step.ts';
import { blankBefore } from './chain.ts';
import { type Work, exactly, reachOf, within } from './reach.ts';
import type { Asked } from './row-slips.ts';
import type { Explanation } from './slip.ts';
import { type Made, slipped, slipsOf } from './slipped.ts';

/** The steps whose slips a value can show: its own, and those before it that the student's figures do not hide. */
export function openSteps({ program, own, sheet }: Work, id: string): string[] {
  const entered = (step: string) => {
    const mine = own[step];
    return mine !== undefined && Array.from({ length: Math.max(mine.length, rowsOf(step)) }, (_, row) => mine[row]).every((value) => value !== undefined);
  };
  const rowsOf = (step: string) => {
    const { per } = program.step(step);
    const column = per === undefined ? undefined : program.steps.find((each) => (each.kind === 'reading' || each.kind === 'given') && each.per === per);
    return column ? [sheet.readings[column.id] ?? []].flat().length : 1;
  };
  return blankBefore(program, id, entered);
}

/** Slips of the catalogue, one by one, that give the value on the student's own figures. */
export function singleSlips(work: Work, asked: Asked, open: readonly string[]): Explanation[] {
  return made(work, open).filter((one) => explains(work, asked, [one])).map(({ at, slip }) => ({ slip: slip.id, at }));
}

/** Two slips at two different steps. */
export function pairsOfSlips(work: Work, asked: Asked, open: readonly string[]): Explanation[] {
  const all = made(work, open);
  const pairs = all.flatMap((one, i) => all.slice(i + 1).filter(({ at }) => at !== one.at).map((other): [Made, Made] => [one, other]));
  return pairs.filter((pair) => explains(work, asked, pair)).map(([one, other]) => ({ slip: one.slip.id, at: one.at, with: { slip: other.slip.id, at: other.at } }));
}

function made({ program }: Work, open: readonly string[]): Made[] {
  return open.flatMap((at) => slipsOf(program.step(at)).map((slip) => ({ at, slip })));
}

/** Whether honest work with these slips gives the value; most are told at a glance, without intervals. */
function explains(work: Work, { id, row, value, right }: Asked, slips: readonly Made[]): boolean {
  const wrong = { ...work, program: slipped(work.program, slips) };
  const glance = exactly(wrong, id).get(id)![row]!;
  if (!Number.isFinite(glance) || Math.abs(glance - value) > farthest(glance, value, right)) return false;
  return within(value, reachOf(wrong, id)[row]!);
}

/** Beyond this no rounding brings two values together: twice what it does to the right one, and some per cent of their size. */
function farthest(one: number, other: number, [low, high]: Interval): number {
  return 2 * (high - low) + 0.05 * Math.max(Math.abs(one), Math.abs(other));
}
