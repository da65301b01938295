import type { Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, nullPoint, ohms, partsAt } from '../kinds.ts';

/** A wire of resistance r bent to a ring, connected at two points that the angle θ lies between; the arcs are in parallel. */
export const ring: Family = {
  id: 'ring',
  tags: ['metre-bridge', 'combinations'],
  choices: gaps,
  body: (choice) => {
    const { own, other } = partsAt(choice, 'l');
    const balanced = { id: 'C', as: `Y * ${own} / ${other}`, slips: { 'ratio inverted': `Y * ${other} / ${own}` } };
    const acts = { id: 'C', as: 'r * theta * (360 - theta) / 360^2', slips: { 'one arc alone': 'r * theta / 360' } };
    return {
      quantities: {
        r: ohms('r', ['12', '16', '18', '20', '24', '27', '32', '36', '40', '48', '54', '60', '72']),
        theta: { tex: '\\theta', unit: '°', fixed: '180', values: ['60', '90', '120', '180'], between: ['0', '360'] },
        Y: ohms('Y'),
        C: ohms('C'),
        l: nullPoint('l'),
        W: bridgeWire,
      },
      condition: [`C * ${other} = Y * ${own}`, 'C * 360^2 = r * theta * (360 - theta)'],
      asks: {
        ring: { finds: ['r'], algebra: 2, steps: [balanced, { id: 'r', as: 'C * 360^2 / (theta * (360 - theta))', slips: { 'arcs in series': 'C' } }] },
        other: { finds: ['Y'], algebra: 2, steps: [acts, { id: 'Y', as: `C * ${other} / ${own}`, slips: { 'ratio inverted': `C * ${own} / ${other}` } }] },
        null: { finds: ['l'], algebra: 2, steps: [acts, { id: 'l', as: nullAt(choice, 'W * C / (C + Y)'), slips: { 'wrong end': nullAt(choice, 'W * Y / (C + Y)') } }] },
      },
    };
  },
};
