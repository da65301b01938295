import type { Family } from '../family.ts';
import { ohms, pure } from '../kinds.ts';

/** A uniform wire of length L in the left gap; the parts of the bridge wire are as a : b. */
export const lengthPerOhm: Family = {
  id: 'length-per-ohm',
  tags: ['metre-bridge', 'wires'],
  body: {
    quantities: {
      Q: ohms('Q'),
      a: pure('a', ['2', '3', '4', '5']),
      b: pure('b', ['1', '2', '3', '4', '5']),
      L: { tex: 'L', unit: 'm', values: ['0.60', '0.75', '0.90', '1.20', '1.50', '1.80', '2.00'] },
      X: { tex: 'X', unit: 'Ω' },
      y: { tex: 'y', unit: 'm' },
    },
    condition: ['X * b = Q * a', 'y * X = L'],
    asks: {
      length: {
        finds: ['X', 'y'],
        algebra: 1,
        steps: [{ id: 'X', as: 'Q * a / b', slips: { 'ratio inverted': 'Q * b / a' } }, { id: 'y', as: 'L / X', slips: { 'resistance a length for the length an ohm': 'X / L' } }],
      },
    },
  },
};
