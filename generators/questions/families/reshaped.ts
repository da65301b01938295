import type { Body, Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, nullPoint, partsAt, pure } from '../kinds.ts';

/** What becomes of a wire's resistance: drawn to n times its length, cut to 1/n of it, folded in n equal parts side by side, n times the diameter. */
const factors = { stretched: 'n^2', cut: '1 / n', folded: '1 / n^2', thicker: '1 / n^2' } as const;
/** The same where the change is taken to be of the first power, or of the second. */
const mistaken = { stretched: 'n', cut: '1 / n^2', folded: '1 / n', thicker: '1 / n' } as const;

/** The wire in one gap is reshaped, its metal kept or a part of it. */
export const reshaped: Family = {
  id: 'reshaped',
  tags: ['metre-bridge', 'wires'],
  choices: { how: ['stretched', 'cut', 'folded', 'thicker'], ...gaps },
  body: (choice): Body => {
    const how = choice['how'] as keyof typeof factors;
    const before = partsAt(choice, 'l1');
    const after = partsAt(choice, 'l2');
    const k = `${after.own} * ${before.other} / (${before.own} * ${after.other})`;
    return {
      quantities: {
        n: { ...pure('n', how === 'stretched' ? ['2', '3', '1.5', '1.2'] : ['2', '3', '4']), neat: 'any' },
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
          steps: [{ id: 'k', as: k }, { id: 'n', as: how === 'stretched' ? 'sqrt(k)' : how === 'cut' ? '1 / k' : 'sqrt(1 / k)', slips: { 'wrong power of n': how === 'cut' ? 'sqrt(1 / k)' : how === 'stretched' ? 'k' : '1 / k' } }],
        },
      },
    };
  },
};
