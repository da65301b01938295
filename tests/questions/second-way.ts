import type { Choice } from '../../generators/questions/family.ts';
import { type Gap, offNull, parallel } from './network.ts';

type Values = Record<string, number>;

/** The gaps in their places on the bridge: what the choice speaks of, and the other. */
const placed = ({ gap }: Choice, own: Gap, other: Gap): [Gap, Gap] => (gap === 'right' ? [other, own] : [own, other]);

/** Off the null at l for a bare wire. */
const off = ([left, right]: [Gap, Gap], l: number, W: number) => offNull(left, right, l, W - l);

/** Each family's circuits, from Kirchhoff's law: all are zero where the quantities fit. */
export const secondWay: Record<string, (v: Values, choice: Choice) => number[]> = {
  balance: ({ P, Q, l, W }) => [off([P!, Q!], l!, W!)],
  interchange: ({ P, Q, l1, l2, s, W }) => [off([P!, Q!], l1!, W!), off([Q!, P!], l2!, W!), (l2! - l1! - s!) / W!],
  shunt: ({ X, Y, S, C, l1, l2, s, W }, choice) => [
    off(placed(choice, X!, Y!), l1!, W!),
    off(placed(choice, parallel(X!, S!), Y!), l2!, W!),
    off(placed(choice, C!, Y!), l2!, W!),
    (choice['gap'] === 'right' ? l2! - l1! - s! : l1! - l2! - s!) / W!,
  ],
};
