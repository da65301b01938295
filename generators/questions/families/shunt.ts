import { changedGap } from '../changed-gap.ts';
import type { Family } from '../family.ts';
import { gaps } from '../kinds.ts';

/** A resistor is put in parallel with that of one gap. */
export const shunt: Family = {
  id: 'shunt',
  tags: ['metre-bridge', 'combinations'],
  choices: gaps,
  body: (choice) =>
    changedGap(choice, {
      together: { as: 'X * S / (X + S)', slips: { 'added as in series': 'X + S' } },
      other: { as: 'X * C / (X - C)', slips: { 'combination taken for the shunt': 'C', 'difference taken': 'X - C' } },
      own: { as: 'C * S / (S - C)', slips: { 'combination taken for the first': 'C' } },
      condition: 'C * (X + S) = X * S',
      alone: (b, a) => `(${b.own} * ${a.other} - ${a.own} * ${b.other}) / (${a.own} * ${b.other})`,
      smaller: true,
      reason: 'the null point moves towards the shunted gap',
    }),
};
