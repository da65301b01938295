import type { Ask, Body, Family } from '../family.ts';
import { ohms } from '../kinds.ts';

/** Four arms: P and Q in one branch, R and S in the other, P beside R. The arm S alone, or with T beside or after it, balances. */
export const wheatstone: Family = {
  id: 'wheatstone',
  tags: ['wheatstone'],
  choices: { arm: ['plain', 'shunted', 'lengthened'] },
  body: ({ arm }) => (arm === 'plain' ? plain : repaired(arm === 'shunted')),
};

const arms = { P: ohms('P'), Q: ohms('Q'), R: ohms('R'), S: ohms('S') };

/** One arm from the three others. */
const arm = (id: string, as: string, inverted: string): Ask => ({ finds: [id], algebra: 1, steps: [{ id, as, slips: { 'ratio inverted': inverted } }] });

const plain: Body = {
  quantities: { ...arms, E: { tex: 'E', unit: 'V', values: ['1.5', '2.0', '3.0', '4.0', '6.0', '12'] }, N: { tex: 'N', unit: 'Ω' }, I: { tex: 'I', unit: 'A' } },
  condition: ['P * S = Q * R', 'N * (P + Q + R + S) = (P + Q) * (R + S)', 'E = I * N'],
  asks: {
    first: arm('P', 'Q * R / S', 'Q * S / R'),
    second: arm('Q', 'P * S / R', 'P * R / S'),
    third: arm('R', 'P * S / Q', 'Q * S / P'),
    current: {
      finds: ['S', 'I'],
      algebra: 2,
      steps: [
        { id: 'S', as: 'R * Q / P', slips: { 'ratio inverted': 'R * P / Q' } },
        { id: 'N', as: '(P + Q) * (R + S) / (P + Q + R + S)', slips: { 'branches in series': 'P + Q + R + S' } },
        { id: 'I', as: 'E / N' },
      ],
    },
    fourth: { finds: ['S'], algebra: 1, steps: [{ id: 'S', as: 'R * Q / P', slips: { 'ratio inverted': 'R * P / Q', 'wrong arms paired': 'P * Q / R' } }] },
  },
};

/** Four given resistors that do not balance; T put in parallel or in series with S makes them. */
function repaired(shunted: boolean): Body {
  const needed = { id: 'C', as: 'R * Q / P', slips: { 'ratio inverted': 'R * P / Q' } };
  return {
    quantities: { ...arms, C: { tex: 'C', unit: 'Ω' }, T: { tex: 'T', unit: 'Ω' } },
    condition: ['P * C = Q * R', shunted ? 'C * (S + T) = S * T' : 'C = S + T'],
    holds: { 'the added resistor can balance it': shunted ? 'S * P - Q * R' : 'Q * R - S * P' },
    asks: {
      [shunted ? 'shunt' : 'series']: {
        finds: ['T'],
        algebra: 2,
        steps: [needed, shunted ? { id: 'T', as: 'S * C / (S - C)', slips: { 'difference taken': 'S - C', 'combination taken for the shunt': 'C' } } : { id: 'T', as: 'C - S', slips: { 'total taken for the added': 'C' } }],
      },
    },
  };
}
