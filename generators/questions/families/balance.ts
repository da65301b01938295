import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** Two resistances and the null point: any of the three from the others. */
export const balance: Family = {
  id: 'balance',
  tags: ['metre-bridge'],
  body: {
    quantities: { P: ohms('P'), Q: ohms('Q'), l: nullPoint('l'), W: bridgeWire },
    condition: ['P * (W - l) = Q * l'],
    asks: {
      right: {
        finds: ['Q'],
        algebra: 1,
        steps: [{ id: 'Q', as: 'P * (W - l) / l', slips: { 'ratio inverted': 'P * l / (W - l)', 'divided by the whole wire': 'P * l / W', 'rest over whole': 'P * (W - l) / W' } }],
      },
      left: {
        finds: ['P'],
        algebra: 1,
        steps: [{ id: 'P', as: 'Q * l / (W - l)', slips: { 'ratio inverted': 'Q * (W - l) / l', 'divided by the whole wire': 'Q * l / W', 'rest over whole': 'Q * (W - l) / W' } }],
      },
      null: {
        finds: ['l'],
        algebra: 1,
        steps: [{ id: 'l', as: 'W * P / (P + Q)', slips: { 'wrong end': 'W * Q / (P + Q)' } }],
      },
    },
  },
};
