import { changedGap } from '../changed-gap.ts';
import type { Family } from '../family.ts';
import { gaps } from '../kinds.ts';

/** Of two resistors in series in one gap, together X, one, S, is taken out. */
export const removed: Family = {
  id: 'removed',
  tags: ['metre-bridge', 'combinations'],
  choices: gaps,
  body: (choice) =>
    changedGap(choice, {
      together: { as: 'X - S', slips: { 'added instead of taken out': 'X + S' } },
      other: { as: 'X - C', slips: { 'rest taken for the removed': 'C' } },
      own: { as: 'C + S', slips: { 'rest taken for the total': 'C' } },
      condition: 'C + S = X',
      alone: (b, a) => `${b.own} * ${a.other} / (${b.own} * ${a.other} - ${a.own} * ${b.other})`,
      smaller: true,
      reason: 'the null point moves towards the gap with less',
    }),
};
