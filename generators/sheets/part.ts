import type { Issue } from './issue.ts';
import { type Ledger, makeLedger } from './ledger.ts';

/** One of several equal parts of a class, counted from 1. */
export interface Part {
  number: number;
  of: number;
}

/** The issues of a part: a run of the class, which keeps its order, and what else these students were issued. */
export function partOf(ledger: Ledger, { number, of }: Part): Ledger {
  const first = ledger.issues.filter(({ sitting }) => sitting === 1);
  const own = first.slice(...bounds(first.length, { number, of }));
  const rolls = new Set(own.map(({ roll }) => roll));
  const again = ledger.issues.filter(({ roll, sitting }) => sitting > 1 && rolls.has(roll));
  return makeLedger({ ...ledger, part: { number, of, students: first.length } }, [...own, ...again]);
}

/** Where a part of so many students begins and ends. */
export function bounds(students: number, { number, of }: Part): [number, number] {
  return [Math.floor(((number - 1) * students) / of), Math.floor((number * students) / of)];
}

/** The issues of parts, in the order of the class. */
export function joined(parts: readonly Ledger[]): Issue[] {
  const issues = parts.flatMap((part) => part.issues);
  return [...issues.filter(({ sitting }) => sitting === 1), ...issues.filter(({ sitting }) => sitting > 1)];
}
