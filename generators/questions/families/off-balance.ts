import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** Current through the galvanometer away from the null, from the middle strip to the jockey; the cell without resistance. */
export const offBalance: Family = {
  id: 'off-balance',
  tags: ['metre-bridge', 'currents'],
  body: {
    quantities: {
      P: ohms('P'),
      Q: ohms('Q'),
      l: nullPoint('l'),
      sigma: { tex: '\\sigma', unit: 'Ω/cm', values: ['0.020', '0.040', '0.050', '0.10', '0.20'] },
      G: ohms('G', ['20', '40', '50', '60', '80', '100']),
      E: { tex: 'E', unit: 'V', values: ['1.5', '2.0', '3.0', '4.0'] },
      a: { tex: 'a', unit: 'Ω' },
      b: { tex: 'b', unit: 'Ω' },
      V: { tex: 'V', unit: 'V', between: [undefined, undefined] },
      N: { tex: 'R', unit: 'Ω' },
      I: { tex: 'I_G', unit: 'mA', between: [undefined, undefined], eitherWay: true, neat: 'any', printed: [-100, 100] },
      W: bridgeWire,
    },
    condition: ['I * (G * (P + Q) * (a + b) + P * Q * (a + b) + a * b * (P + Q)) = 1000 * E * (Q * a - P * b)', 'a * (W - l) = b * l'],
    holds: { 'the bridge is off balance': '(Q * l - P * (W - l))^2' },
    asks: {
      current: {
        finds: ['I'],
        algebra: 3,
        steps: [
          { id: 'a', as: 'sigma * l' },
          { id: 'b', as: 'sigma * (W - l)' },
          { id: 'V', as: 'E * Q / (P + Q) - E * b / (a + b)', slips: { 'left arms taken once': 'E * P / (P + Q) - E * b / (a + b)' } },
          { id: 'N', as: 'P * Q / (P + Q) + a * b / (a + b)' },
          { id: 'I', as: 'V / (N + G)', si: true, slips: { 'galvanometer alone': 'V / G' } },
        ],
      },
    },
  },
};
