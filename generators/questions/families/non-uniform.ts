import type { Body, Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** The resistance of the wire per length falls as 1/√x along it, or grows as x; x from the left end. */
export const nonUniform: Family = {
  id: 'non-uniform',
  tags: ['metre-bridge', 'wires'],
  choices: { varies: ['inverse-root', 'linear'] },
  body: ({ varies }): Body => {
    const root = varies === 'inverse-root';
    const uniform = { 'wire taken as uniform': 'W * P / (P + Q)' };
    return {
      quantities: { P: ohms('P'), Q: ohms('Q'), l: { ...nullPoint('l'), values: ['16', '25', '36', '49', '64', '20', '30', '40', '50', '60'] }, W: bridgeWire },
      condition: [root ? 'P * (sqrt(W) - sqrt(l)) = Q * sqrt(l)' : 'P * (W^2 - l^2) = Q * l^2'],
      asks: {
        null: { finds: ['l'], algebra: 3, steps: [{ id: 'l', marks: 2, as: root ? 'W * (P / (P + Q))^2' : 'W * sqrt(P / (P + Q))', slips: uniform }] },
        right: {
          finds: ['Q'],
          algebra: 3,
          steps: [{ id: 'Q', marks: 2, as: root ? 'P * (sqrt(W) - sqrt(l)) / sqrt(l)' : 'P * (W^2 - l^2) / l^2', slips: { 'wire taken as uniform for Q': 'P * (W - l) / l', 'ratio inverted': root ? 'P * sqrt(l) / (sqrt(W) - sqrt(l))' : 'P * l^2 / (W^2 - l^2)' } }],
        },
      },
    };
  },
};
