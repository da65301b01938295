import type { Family } from '../family.ts';

const ohms = (tex: string, values: readonly string[]) => ({ tex, unit: 'Ω', values, neat: 'any' as const });

/** The ratio arms P and Q exchanged: R1 balances before, R2 after; the unknown is the geometric mean. */
export const armsSwapped: Family = {
  id: 'arms-swapped',
  tags: ['wheatstone'],
  body: {
    quantities: {
      R1: ohms('R_1', ['100', '120', '150', '200', '250', '324', '400']),
      R2: ohms('R_2', ['102', '121', '144', '196', '256', '361', '405', '441']),
      X: ohms('X', ['100', '120', '150', '198', '252', '340']),
      k: { tex: 'k', unit: '', neat: 'any' },
    },
    condition: ['X^2 = R1 * R2', 'k^2 * R2 = R1'],
    holds: { 'the two settings differ': '(R1 - R2)^2' },
    asks: {
      unknown: { finds: ['X'], algebra: 2, steps: [{ id: 'X', as: 'sqrt(R1 * R2)', slips: { 'root not taken': 'R1 * R2', 'first setting taken': 'R1' } }] },
      setting: { finds: ['R2'], algebra: 2, steps: [{ id: 'R2', as: 'X^2 / R1' }] },
      ratio: { finds: ['k'], algebra: 2, steps: [{ id: 'k', as: 'sqrt(R1 / R2)', slips: { 'root not taken of the ratio': 'R1 / R2' } }] },
    },
  },
};
