import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** Lengths of wire that the ends add; board examination values of 1 to 2 cm. */
const ends = ['0.5', '1.0', '1.5', '2.0'] as const;

/** The ends of the wire act as α and β more of it. */
export const endCorrections: Family = {
  id: 'end-corrections',
  tags: ['metre-bridge', 'end-corrections'],
  body: {
    quantities: {
      P: ohms('P'),
      Q: ohms('Q'),
      l: nullPoint('l'),
      alpha: { tex: '\\alpha', unit: 'cm', values: ends, mayBeLeast: true },
      beta: { tex: '\\beta', unit: 'cm', values: ends, mayBeLeast: true },
      W: bridgeWire,
    },
    condition: ['P * (W - l + beta) = Q * (l + alpha)'],
    asks: {
      right: {
        finds: ['Q'],
        algebra: 2,
        steps: [{ id: 'Q', as: 'P * (W - l + beta) / (l + alpha)', slips: { 'ends left out': 'P * (W - l) / l', 'ratio inverted': 'P * (l + alpha) / (W - l + beta)', 'ends taken off': 'P * (W - l - beta) / (l - alpha)' } }],
      },
      left: {
        finds: ['P'],
        algebra: 2,
        steps: [{ id: 'P', as: 'Q * (l + alpha) / (W - l + beta)', slips: { 'ends left out': 'Q * l / (W - l)', 'ratio inverted': 'Q * (W - l + beta) / (l + alpha)', 'ends taken off': 'Q * (l - alpha) / (W - l - beta)' } }],
      },
      null: {
        finds: ['l'],
        algebra: 2,
        steps: [{ id: 'l', as: '(P * (W + beta) - Q * alpha) / (P + Q)', slips: { 'ends left out': 'W * P / (P + Q)' } }],
      },
    },
  },
};
