import type { Body, Choice, Family } from '../family.ts';
import { bridgeWire, gaps, movedBy, nullAt, nullPoint, ohms, partsAt, shift, towards } from '../kinds.ts';

/**
 * A resistor is put in parallel with that of one gap. X is what is shunted, Y stands in the other gap.
 * Without the shunt X : Y is as the parts of the wire; with it, the combination C is.
 */
export const shunt: Family = {
  id: 'shunt',
  tags: ['metre-bridge', 'combinations'],
  choices: gaps,
  body: (choice) => {
    const before = partsAt(choice, 'l1');
    const after = partsAt(choice, 'l2');
    return {
      quantities: { X: ohms('X'), Y: ohms('Y'), S: ohms('S'), C: ohms('C'), l1: nullPoint('l_1'), l2: nullPoint('l_2'), s: shift, W: bridgeWire },
      condition: [`X * ${before.other} = Y * ${before.own}`, `C * ${after.other} = Y * ${after.own}`, 'C * (X + S) = X * S', `s = ${towards(choice, 'l1', 'l2')}`],
      holds: { 'the null point moves towards the shunted gap': `${before.own} - ${after.own}` },
      asks: asks(choice, before, after),
    };
  },
};

type Parts = ReturnType<typeof partsAt>;

function asks(choice: Choice, before: Parts, after: Parts): Body['asks'] {
  const alone = { id: 'X', as: `Y * ${before.own} / ${before.other}`, slips: { 'ratio inverted': `Y * ${before.other} / ${before.own}` } };
  const combined = { id: 'C', as: `Y * ${after.own} / ${after.other}`, slips: { 'ratio inverted': `Y * ${after.other} / ${after.own}` } };
  const parallel = { id: 'C', as: 'X * S / (X + S)', slips: { 'added as in series': 'X + S' } };
  const added = { id: 'S', as: 'X * C / (X - C)', slips: { 'combination taken for the shunt': 'C', 'difference taken': 'X - C' } };
  const first = { id: 'l1', as: nullAt(choice, 'W * X / (X + Y)') };
  const second = { id: 'l2', as: nullAt(choice, 'W * C / (C + Y)') };
  const moved = { id: 's', as: towards(choice, 'l1', 'l2'), slips: { 'second null for the shift': 'l2' } };
  return {
    both: {
      finds: ['X', 'Y'],
      algebra: 3,
      steps: [
        { id: 'X', as: `S * (${before.own} * ${after.other} - ${after.own} * ${before.other}) / (${after.own} * ${before.other})` },
        { id: 'Y', as: `X * ${before.other} / ${before.own}`, slips: { 'ratio inverted': `X * ${before.own} / ${before.other}` } },
      ],
    },
    shunt: { finds: ['S'], algebra: 2, steps: [alone, combined, added] },
    'shunt, shunted known': {
      finds: ['S'],
      algebra: 3,
      steps: [{ id: 'Y', as: `X * ${before.other} / ${before.own}`, slips: { 'ratio inverted': `X * ${before.own} / ${before.other}` } }, combined, added],
    },
    'shunt for a null': { finds: ['S'], algebra: 2, steps: [combined, added] },
    'shunt for a shift': { finds: ['S'], algebra: 3, steps: [first, { id: 'l2', as: movedBy(choice, 'l1', 's') }, combined, added] },
    shift: { finds: ['l2', 's'], algebra: 2, steps: [first, parallel, second, moved] },
    'shift, shunted unknown': { finds: ['X', 'l2', 's'], algebra: 2, steps: [alone, parallel, second, moved] },
    'other gap': { finds: ['Y', 'l2', 's'], algebra: 2, steps: [{ id: 'Y', as: `X * ${before.other} / ${before.own}` }, parallel, second, moved] },
  };
}
