import { UserMistake, type Mistake } from '../mistake.ts';

/** More than these help nobody; the first ones usually explain the others. */
const MOST_SHOWN = 100;

/** All mistakes of one input in one error, by row; what stands in no row comes first. */
export function allMistakes(mistakes: readonly Mistake[]): UserMistake {
  const sorted = mistakes.toSorted((a, b) => (a.row ?? 0) - (b.row ?? 0));
  const hidden = sorted.length - MOST_SHOWN;
  if (hidden <= 0) return new UserMistake(sorted);
  return new UserMistake([...sorted.slice(0, MOST_SHOWN), { what: `and ${hidden} more; put these right first` }]);
}
