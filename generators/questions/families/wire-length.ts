import type { Family } from '../family.ts';
import { nullPoint, ohms } from '../kinds.ts';

/** A bridge whose wire is not a metre long. */
export const wireLength: Family = {
  id: 'wire-length',
  tags: ['metre-bridge', 'wires'],
  body: {
    quantities: {
      P: ohms('P'),
      Q: ohms('Q'),
      l: { ...nullPoint('l'), printed: [5, 180] },
      W: { tex: 'W', unit: 'cm', values: ['40', '50', '60', '80', '120', '150', '200'], neat: 0.5, printed: [30, 250] },
    },
    condition: ['P * (W - l) = Q * l'],
    asks: {
      null: { finds: ['l'], algebra: 1, steps: [{ id: 'l', as: 'W * P / (P + Q)', slips: { 'wrong end': 'W * Q / (P + Q)', 'wire taken as a metre': '100 * P / (P + Q)' } }] },
      right: { finds: ['Q'], algebra: 1, steps: [{ id: 'Q', as: 'P * (W - l) / l', slips: { 'ratio inverted': 'P * l / (W - l)', 'wire taken as a metre': 'P * (100 - l) / l' } }] },
      left: { finds: ['P'], algebra: 1, steps: [{ id: 'P', as: 'Q * l / (W - l)', slips: { 'ratio inverted': 'Q * (W - l) / l', 'wire taken as a metre': 'Q * l / (100 - l)' } }] },
      wire: { finds: ['W'], algebra: 2, steps: [{ id: 'W', as: 'l * (P + Q) / P', slips: { 'ratio inverted': 'l * (P + Q) / Q', 'right part taken for the wire': 'l * Q / P' } }] },
    },
  },
};
