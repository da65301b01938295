import { changedGap } from '../changed-gap.ts';
import type { Family } from '../family.ts';
import { gaps } from '../kinds.ts';

/** A resistor is put in series with that of one gap. */
export const series: Family = {
  id: 'series',
  tags: ['metre-bridge', 'combinations'],
  choices: gaps,
  body: (choice) =>
    changedGap(choice, {
      together: { as: 'X + S', slips: { 'combined as in parallel': 'X * S / (X + S)' } },
      other: { as: 'C - X', slips: { 'total taken for the added': 'C' } },
      own: { as: 'C - S', slips: { 'total taken for the first': 'C' } },
      condition: 'C = X + S',
      alone: (b, a) => `${b.own} * ${a.other} / (${a.own} * ${b.other} - ${b.own} * ${a.other})`,
      smaller: false,
      reason: 'the null point moves away from the gap with more',
    }),
};
