import type { Interval } from '../quantities/step.ts';
import type { Worked } from './worked.ts';

/** What tells a sheet from others: its right answers with what is accepted for them. */
export type Marks = { id: string; row: number; right: number; accept: Interval }[];

/** A right answer that would also be accepted on another sheet. */
export interface Clash {
  id: string;
  row: number;
}

/** The answers of these quantities, row by row. */
export function marks(worked: Worked, ids: readonly string[]): Marks {
  return ids.flatMap((id) => worked.cells(id).map(({ exact, accept }, row) => ({ id, row, right: exact, accept })));
}

/** The answers by which two sheets cannot be told apart; both have the same quantities. */
export function clashes(one: Marks, other: Marks): Clash[] {
  const found: Clash[] = [];
  // A plain loop: a large class makes tens of millions of these comparisons.
  for (let i = 0; i < one.length && i < other.length; i++) {
    const [mine, their] = [one[i]!, other[i]!];
    if (inside(mine.right, their.accept) || inside(their.right, mine.accept)) found.push({ id: mine.id, row: mine.row });
  }
  return found;
}

const inside = (value: number, [low, high]: Interval) => value >= low && value <= high;
