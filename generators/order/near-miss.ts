import { distance } from 'fastest-levenshtein';

/** A swapped pair of letters counts as two. */
const FARTHEST = 2;
/** Words as short as this are all near each other. */
const SHORT = 3;

/** The candidate that a mistyped word most likely meant: at most two letters away, one in short words. Case is ignored. */
export function nearMiss(word: string, candidates: readonly string[]): string | undefined {
  const typed = word.toLowerCase();
  const near = candidates
    .filter((candidate) => candidate !== word)
    .map((candidate) => ({ candidate, far: distance(typed, candidate.toLowerCase()) }))
    .filter(({ candidate, far }) => far <= (Math.min(typed.length, candidate.length) <= SHORT ? 1 : FARTHEST))
    .sort((a, b) => a.far - b.far);
  return near[0]?.candidate;
}

/** '; did you mean nichrome?', or nothing where no candidate is near. */
export function didYouMean(word: string, candidates: readonly string[]): string {
  const near = nearMiss(word, candidates);
  return near === undefined ? '' : `; did you mean ${near}?`;
}
