import type { Family } from '../family.ts';
import { bridgeWire, gaps, nullPoint, ohms, partsAt } from '../kinds.ts';

/** A null near an end says how R is to be chosen to bring it to the middle, or to another place. */
export const bestChoice: Family = {
  id: 'best-choice',
  tags: ['metre-bridge', 'practical'],
  choices: gaps,
  body: (choice) => {
    const first = partsAt(choice, 'l1');
    const then = partsAt(choice, 'l2');
    return {
      quantities: {
        S1: ohms('S_1', ['10', '20', '40', '50', '60', '80', '100']),
        l1: { ...nullPoint('l_1'), values: ['2.0', '2.5', '4.0', '5.0', '6.0', '8.0', '10.0', '12.5', '90.0', '92.0', '95.0', '96.0'], printed: [0, 100] },
        X: { tex: 'X', unit: 'Ω' },
        S2: ohms('S_2'),
        l2: { tex: 'l_2', unit: 'cm', fixed: '50.0', values: ['50.0', '50.0', '40.0', '60.0'], between: ['0', 'W'] },
        W: bridgeWire,
      },
      condition: [`X * ${first.other} = S1 * ${first.own}`, `X * ${then.other} = S2 * ${then.own}`],
      asks: {
        resistance: {
          finds: ['X', 'S2'],
          algebra: 2,
          steps: [{ id: 'X', as: `S1 * ${first.own} / ${first.other}`, slips: { 'ratio inverted': `S1 * ${first.other} / ${first.own}` } }, { id: 'S2', as: `X * ${then.other} / ${then.own}` }],
        },
      },
    };
  },
};
