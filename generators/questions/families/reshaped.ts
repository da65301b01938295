import type { Body, Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, nullPoint, partsAt, pure } from '../kinds.ts';

interface Reshaping {
  /** What the resistance is multiplied by, and the same with the wrong power. */
  factor: string;
  mistaken: string;
  /** n from this factor k, and the same with the wrong power. */
  inverse: string;
  mistakenInverse: string;
  /** What n is drawn from; an asked n is a multiple of the grain, so that there are no parts of pieces. */
  values: readonly string[];
  grain: number;
}

/** A wire drawn to n times its length, cut to 1/n of it, folded in n equal parts side by side, of n times the diameter, drawn to 1/n of its diameter. */
const RESHAPINGS: Readonly<Record<string, Reshaping>> = {
  stretched: { factor: 'n^2', mistaken: 'n', inverse: 'sqrt(k)', mistakenInverse: 'k', values: ['1.1', '1.2', '1.25', '1.4', '1.5', '2', '2.5', '3'], grain: 0.05 },
  cut: { factor: '1 / n', mistaken: '1 / n^2', inverse: '1 / k', mistakenInverse: 'sqrt(1 / k)', values: ['2', '3', '4', '5'], grain: 1 },
  folded: { factor: '1 / n^2', mistaken: '1 / n', inverse: 'sqrt(1 / k)', mistakenInverse: '1 / k', values: ['2', '3', '4', '5'], grain: 1 },
  thicker: { factor: '1 / n^2', mistaken: '1 / n', inverse: 'sqrt(1 / k)', mistakenInverse: '1 / k', values: ['1.2', '1.25', '1.5', '2', '2.5', '3', '4'], grain: 0.05 },
  thinned: { factor: 'n^4', mistaken: 'n^2', inverse: 'sqrt(sqrt(k))', mistakenInverse: 'sqrt(k)', values: ['1.2', '1.5', '2'], grain: 0.1 },
};

/** The wire in one gap is reshaped, its metal kept or a part of it. */
export const reshaped: Family = {
  id: 'reshaped',
  tags: ['metre-bridge', 'wires'],
  choices: { how: Object.keys(RESHAPINGS), ...gaps },
  body: (choice): Body => {
    const { factor, mistaken, inverse, mistakenInverse, values, grain } = RESHAPINGS[choice['how']!]!;
    const before = partsAt(choice, 'l1');
    const after = partsAt(choice, 'l2');
    const k = `${after.own} * ${before.other} / (${before.own} * ${after.other})`;
    return {
      quantities: {
        n: { ...pure('n', values), between: ['1', undefined], neat: grain, ...(grain === 1 && { whole: true as const }) },
        k: pure('k', ['2']),
        l1: nullPoint('l_1'),
        l2: nullPoint('l_2'),
        W: bridgeWire,
      },
      condition: [`k * ${before.own} * ${after.other} = ${after.own} * ${before.other}`, `k = ${factor}`],
      asks: {
        null: {
          finds: ['l2'],
          algebra: 2,
          steps: [
            { id: 'k', as: factor, slips: { 'wrong power of n': mistaken } },
            { id: 'l2', as: nullAt(choice, `W * k * ${before.own} / (k * ${before.own} + ${before.other})`), slips: { 'other gap changed': nullAt(choice, `W * ${before.own} / (${before.own} + k * ${before.other})`) } },
          ],
        },
        times: {
          finds: ['n'],
          algebra: 2,
          drawnBy: 'null',
          steps: [{ id: 'k', as: k }, { id: 'n', as: inverse, slips: { 'wrong power of n': mistakenInverse } }],
        },
      },
    };
  },
};
