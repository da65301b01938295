import type { Interval } from '../quantities/step.ts';
import type { Worked } from './worked.ts';

/** What tells a sheet from others: its right answers, and what is accepted for them, which takes longer to find. */
export interface Marks {
  answers: { id: string; row: number; right: number }[];
  accept(): Interval[];
}

/** A right answer that would also be accepted on another sheet. */
export interface Clash {
  id: string;
  row: number;
}

/** The answers of these quantities, row by row. */
export function marks(worked: Worked, ids: readonly string[]): Marks {
  let known: Interval[] | undefined;
  return {
    answers: ids.flatMap((id) => worked.values.exact.get(id)!.map((right, row) => ({ id, row, right }))),
    accept: () => (known ??= ids.flatMap((id) => worked.cells(id).map(({ accept }) => accept))),
  };
}

/** The answers by which two sheets cannot be told apart; both have the same quantities. */
export function clashes(one: Marks, other: Marks): Clash[] {
  const [mine, their] = [one.accept(), other.accept()];
  return found(one, (right, i) => inside(right, their[i]!) || inside(other.answers[i]!.right, mine[i]!), their.length);
}

/** Those among them that are right on the one sheet and accepted on the other: what the first accepts need not be known. */
export function accepted(one: Marks, other: Marks): Clash[] {
  const their = other.accept();
  return found(one, (right, i) => inside(right, their[i]!), their.length);
}

function found({ answers }: Marks, clash: (right: number, i: number) => boolean, length: number): Clash[] {
  const all: Clash[] = [];
  // A plain loop: a large class makes tens of millions of these comparisons.
  for (let i = 0; i < answers.length && i < length; i++) {
    const { id, row, right } = answers[i]!;
    if (clash(right, i)) all.push({ id, row });
  }
  return all;
}

const inside = (value: number, [low, high]: Interval) => value >= low && value <= high;
