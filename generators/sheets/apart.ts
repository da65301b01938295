import type { Worked } from './worked.ts';

/** A right answer that would also be accepted on another sheet. */
export interface Clash {
  id: string;
  row: number;
}

/** The answers, of those named, by which two sheets cannot be told apart. */
export function clashes(one: Worked, other: Worked, ids: readonly string[]): Clash[] {
  return ids.flatMap((id) => {
    const theirs = other.cells(id);
    return one.cells(id).flatMap((mine, row) => {
      const their = theirs[row];
      const same = their && (inside(mine.exact, their.accept) || inside(their.exact, mine.accept));
      return same ? [{ id, row }] : [];
    });
  });
}

const inside = (value: number, [low, high]: readonly [number, number]) => value >= low && value <= high;
