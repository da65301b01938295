import type { Choice } from '../../generators/questions/family.ts';
import { type Gap, offNull, parallel, potentials, series } from './network.ts';

type Values = Record<string, number>;

/** The gaps in their places on the bridge: what the choice speaks of, and the other. */
const placed = ({ gap }: Choice, own: Gap, other: Gap): [Gap, Gap] => (gap === 'right' ? [other, own] : [own, other]);

/** Off the null at l for a bare wire. */
const off = ([left, right]: [Gap, Gap], l: number, W: number) => offNull(left, right, l, W - l);

/** Each family's circuits, from Kirchhoff's law: all are zero where the quantities fit. */
export const secondWay: Record<string, (v: Values, choice: Choice, direction: string) => number[]> = {
  balance: ({ P, Q, l, W }) => [off([P!, Q!], l!, W!)],
  interchange: ({ P, Q, l1, l2, s, W }) => [off([P!, Q!], l1!, W!), off([Q!, P!], l2!, W!), (l2! - l1! - s!) / W!],
  shunt: changedGap(parallel),
  series: changedGap(series),
  removed: ({ X, Y, S, C, l1, l2, s, W }, choice) => [
    off(placed(choice, series(C!, S!), Y!), l1!, W!),
    off(placed(choice, X!, Y!), l1!, W!),
    off(placed(choice, C!, Y!), l2!, W!),
    off(placed(choice, X! - S!, Y!), l2!, W!),
    (Math.abs(l2! - l1!) - s!) / W!,
  ],
  scaling: ({ k, l1, l2, s, W }, choice, direction) => {
    // Whatever is in the gaps, one ohm in the other.
    const ratio = choice['gap'] === 'right' ? (W! - l1!) / l1! : l1! / (W! - l1!);
    return [off(placed(choice, ratio * k!, 1), l2!, W!), (l2! - l1! - s!) / W!, direction === 'null from equal gaps' ? off([1, 1], l1!, W!) : NaN];
  },
  'both-gaps': ({ P, Q, p, q, l1, l2, W }) => [off([P!, Q!], l1!, W!), off([series(P!, p!), series(Q!, q!)], l2!, W!)],
  combination: ({ A, B, Q1, Q2, l1, l2, T, C, Z, D, W }) => [
    off([T!, Q1!], l1!, W!),
    off([C!, Q2!], l2!, W!),
    off([series(A!, B!), Q1!], l1!, W!),
    off([parallel(A!, B!), Q2!], l2!, W!),
    Z! / C! / T! - 1,
    (A! - B! - D!) / T!,
    A! / T! + B! / T! - 1,
  ],
  ring: ({ r, theta, Y, C, l, W }, choice) => [
    off(placed(choice, parallel((r! * theta!) / 360, (r! * (360 - theta!)) / 360), Y!), l!, W!),
    off(placed(choice, C!, Y!), l!, W!),
  ],
  'end-corrections': ({ P, Q, l, alpha, beta, W }) => [withEnds(P!, Q!, l!, alpha!, beta!, W!)],
  'end-corrections-found': ({ P, Q, l1, l2, alpha, beta, W }) => [withEnds(P!, Q!, l1!, alpha!, beta!, W!), withEnds(Q!, P!, l2!, alpha!, beta!, W!)],
};

function changedGap(together: (a: number, b: number) => Gap) {
  return ({ X, Y, S, C, l1, l2, s, W }: Values, choice: Choice) => [
    off(placed(choice, X!, Y!), l1!, W!),
    off(placed(choice, together(X!, S!), Y!), l2!, W!),
    off(placed(choice, C!, Y!), l2!, W!),
    (Math.abs(l2! - l1!) - s!) / W!,
  ];
}

/** The ends of the wire as resistances in series with it. */
function withEnds(left: number, right: number, l: number, alpha: number, beta: number, W: number): number {
  const at = potentials([['A', 'B', left], ['B', 'C', right], ['A', 'w', alpha], ['w', 'J', l], ['J', 'v', W - l], ['v', 'C', beta]], ['A', 'C']);
  return at['B']! - at['J']!;
}
