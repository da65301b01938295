import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

const perLength = (tex: string) => ({ tex, unit: 'Ω/cm', values: ['0.02', '0.03', '0.04', '0.05', '0.06', '0.08', '0.10'] });

/** The wire is of two pieces joined at c, with σ1 and σ2 of resistance a length; the null lies on the piece of the choice. */
export const twoPartWire: Family = {
  id: 'two-part-wire',
  tags: ['metre-bridge', 'wires'],
  choices: { piece: ['left', 'right'] },
  body: ({ piece }) => {
    const [a, b] = piece === 'left' ? ['sigma1 * l', 'sigma1 * (c - l) + sigma2 * (W - c)'] : ['sigma1 * c + sigma2 * (l - c)', 'sigma2 * (W - l)'];
    const atNull = piece === 'left' ? 'P * (sigma1 * c + sigma2 * (W - c)) / (sigma1 * (P + Q))' : '(P * sigma2 * W + Q * c * (sigma2 - sigma1)) / (sigma2 * (P + Q))';
    return {
      quantities: {
        P: ohms('P'),
        Q: ohms('Q'),
        l: nullPoint('l'),
        c: { tex: 'c', unit: 'cm', values: ['40', '50', '60'], between: ['0', 'W'] },
        sigma1: perLength('\\sigma_1'),
        sigma2: perLength('\\sigma_2'),
        A: { tex: 'A', unit: 'Ω' },
        B: { tex: 'B', unit: 'Ω' },
        W: bridgeWire,
      },
      condition: [`P * (${b}) = Q * (${a})`],
      holds: { 'the pieces differ': '(sigma1 - sigma2)^2', ...(piece === 'left' ? { 'the null point is on the left piece': 'c - l' } : { 'the null point is on the right piece': 'l - c' }) },
      asks: {
        right: {
          finds: ['Q'],
          algebra: 2,
          steps: [{ id: 'A', as: a }, { id: 'B', as: b }, { id: 'Q', as: 'P * B / A', slips: { 'wire taken as uniform for Q': 'P * (W - l) / l', 'ratio inverted': 'P * A / B' } }],
        },
        null: { finds: ['l'], algebra: 3, steps: [{ id: 'l', marks: 2, as: atNull, slips: { 'wire taken as uniform': 'W * P / (P + Q)' } }] },
      },
    };
  },
};
