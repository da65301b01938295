import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

const diameter = (tex: string) => ({ tex, unit: 'mm', values: ['0.20', '0.25', '0.30', '0.40', '0.50', '0.60', '0.80'], neat: 'any' as const });

/** The bridge wire tapers evenly from one diameter to another; the part up to l has the resistance of a cone's frustum. */
export const tapered: Family = {
  id: 'tapered',
  tags: ['metre-bridge', 'wires'],
  body: {
    quantities: { P: ohms('P'), Q: ohms('Q'), a: diameter('a'), b: { ...diameter('b'), printed: [0.15, 1] }, l: nullPoint('l'), W: bridgeWire },
    condition: ['P * a * (W - l) = Q * b * l'],
    asks: {
      null: { finds: ['l'], algebra: 3, steps: [{ id: 'l', marks: 2, as: 'W * P * a / (P * a + Q * b)', slips: { 'wire taken as uniform': 'W * P / (P + Q)', 'ends exchanged': 'W * P * b / (P * b + Q * a)' } }] },
      right: { finds: ['Q'], algebra: 3, steps: [{ id: 'Q', marks: 2, as: 'P * a * (W - l) / (b * l)', slips: { 'wire taken as uniform for Q': 'P * (W - l) / l', 'ends exchanged': 'P * b * (W - l) / (a * l)' } }] },
      end: { finds: ['b'], algebra: 3, steps: [{ id: 'b', marks: 2, as: 'P * a * (W - l) / (Q * l)', slips: { 'ratio inverted': 'Q * a * l / (P * (W - l))' } }] },
    },
    holds: { 'the ends differ': '(a - b)^2' },
  },
};
