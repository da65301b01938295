import type { Body, Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, nullPoint, partsAt, pure } from '../kinds.ts';

/** What becomes of a wire's resistance: drawn to n times its length, cut to 1/n of it, folded in n equal parts side by side, n times the diameter, drawn to 1/n of its diameter. */
const factors = { stretched: 'n^2', cut: '1 / n', folded: '1 / n^2', thicker: '1 / n^2', thinned: 'n^4' } as const;
/** The same where the change is taken to be of the first power, or of the second. */
const mistaken = { stretched: 'n', cut: '1 / n^2', folded: '1 / n', thicker: '1 / n', thinned: 'n^2' } as const;

/** n from what the resistance is multiplied by; and the same with the wrong power. */
const inverses = { stretched: 'sqrt(k)', cut: '1 / k', folded: 'sqrt(1 / k)', thicker: 'sqrt(1 / k)', thinned: 'sqrt(sqrt(k))' } as const;
const mistakenInverses = { stretched: 'k', cut: 'sqrt(1 / k)', folded: '1 / k', thicker: '1 / k', thinned: 'sqrt(k)' } as const;

/** The wire in one gap is reshaped, its metal kept or a part of it. */
export const reshaped: Family = {
  id: 'reshaped',
  tags: ['metre-bridge', 'wires'],
  choices: { how: ['stretched', 'cut', 'folded', 'thicker', 'thinned'], ...gaps },
  body: (choice): Body => {
    const how = choice['how'] as keyof typeof factors;
    const before = partsAt(choice, 'l1');
    const after = partsAt(choice, 'l2');
    const k = `${after.own} * ${before.other} / (${before.own} * ${after.other})`;
    return {
      quantities: {
        n: { ...pure('n', how === 'stretched' ? ['2', '3', '1.5', '1.2'] : how === 'thinned' ? ['2', '1.5', '1.2'] : ['2', '3', '4']), neat: 'any' },
        k: pure('k', ['2']),
        l1: nullPoint('l_1'),
        l2: nullPoint('l_2'),
        W: bridgeWire,
      },
      condition: [`k * ${before.own} * ${after.other} = ${after.own} * ${before.other}`, `k = ${factors[how]}`],
      asks: {
        null: {
          finds: ['l2'],
          algebra: 2,
          steps: [
            { id: 'k', as: factors[how], slips: { 'wrong power of n': mistaken[how] } },
            { id: 'l2', as: nullAt(choice, `W * k * ${before.own} / (k * ${before.own} + ${before.other})`), slips: { 'other gap changed': nullAt(choice, `W * ${before.own} / (${before.own} + k * ${before.other})`) } },
          ],
        },
        times: {
          finds: ['n'],
          algebra: 2,
          steps: [{ id: 'k', as: k }, { id: 'n', as: inverses[how], slips: { 'wrong power of n': mistakenInverses[how] } }],
        },
      },
    };
  },
};
