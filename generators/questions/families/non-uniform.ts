import type { Body, Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** The resistance of the wire per length falls as 1/√x along it, or grows as x, or evenly from one value to another; x from the left end. */
export const nonUniform: Family = {
  id: 'non-uniform',
  tags: ['metre-bridge', 'wires'],
  choices: { varies: ['inverse-root', 'linear', 'growing'] },
  body: ({ varies }): Body => {
    if (varies === 'growing') return growing;
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

const perLength = (tex: string) => ({ tex, unit: 'Ω/cm', values: ['0.02', '0.03', '0.04', '0.05', '0.06', '0.08', '0.10'] });
const LEFT_PART = 'sigma1 * l + (sigma2 - sigma1) * l^2 / (2 * W)';

/** Along the wire, the resistance of a centimetre goes evenly from σ1 at the left end to σ2 at the right one; A and B are those of the two parts. */
const growing: Body = {
  quantities: {
    P: ohms('P'),
    Q: ohms('Q'),
    l: { ...nullPoint('l'), values: ['20', '25', '40', '50', '60', '75', '80'] },
    sigma1: perLength('\\sigma_1'),
    sigma2: perLength('\\sigma_2'),
    A: { tex: 'A', unit: 'Ω' },
    B: { tex: 'B', unit: 'Ω' },
    W: bridgeWire,
  },
  condition: ['P * ((sigma1 + sigma2) * W / 2 - sigma1 * l - (sigma2 - sigma1) * l^2 / (2 * W)) = Q * (sigma1 * l + (sigma2 - sigma1) * l^2 / (2 * W))'],
  holds: { 'the ends differ': '(sigma1 - sigma2)^2' },
  asks: {
    null: {
      finds: ['l'],
      algebra: 3,
      drawnBy: 'right',
      steps: [{ id: 'l', marks: 3, as: 'W * (sqrt(sigma1^2 + (sigma2^2 - sigma1^2) * P / (P + Q)) - sigma1) / (sigma2 - sigma1)', slips: { 'wire taken as uniform': 'W * P / (P + Q)' } }],
    },
    right: {
      finds: ['Q'],
      algebra: 3,
      steps: [
        { id: 'A', as: LEFT_PART },
        { id: 'B', as: '(sigma1 + sigma2) * W / 2 - A' },
        { id: 'Q', as: 'P * B / A', slips: { 'wire taken as uniform for Q': 'P * (W - l) / l', 'ratio inverted': 'P * A / B' } },
      ],
    },
  },
};
