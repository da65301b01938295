import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms, pure } from '../kinds.ts';

/** S in the right gap, then n such in parallel: the null point goes to m times its distance from the left end. */
export const equalShunts: Family = {
  id: 'equal-shunts',
  tags: ['metre-bridge', 'combinations'],
  body: {
    quantities: {
      R: ohms('R'),
      n: { ...pure('n', ['2', '3', '4', '5']), fixed: '2', whole: true },
      m: pure('m', ['1.2', '1.25', '1.5', '1.6', '1.8', '2', '2.5']),
      l: nullPoint('l'),
      S: ohms('S'),
      W: bridgeWire,
    },
    condition: ['R * (W - l) = S * l', 'n * R * (W - m * l) = S * m * l'],
    holds: { 'the null moves less than the resistance': 'n - m', 'the null point moves to the right': 'm - 1' },
    asks: {
      resistance: {
        finds: ['l', 'S'],
        algebra: 3,
        steps: [{ id: 'l', as: 'W * (n - m) / (m * (n - 1))' }, { id: 'S', as: 'R * (W - l) / l', slips: { 'ratio inverted': 'R * l / (W - l)' } }],
      },
      known: {
        finds: ['l', 'R'],
        algebra: 3,
        steps: [{ id: 'l', as: 'W * (n - m) / (m * (n - 1))' }, { id: 'R', as: 'S * l / (W - l)', slips: { 'ratio inverted': 'S * (W - l) / l' } }],
      },
    },
  },
};
