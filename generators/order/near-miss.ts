import { distance } from 'fastest-levenshtein';

/** The candidate that a mistyped word most likely meant: at most a third of its letters differ. Case is ignored. */
export function nearMiss(word: string, candidates: readonly string[]): string | undefined {
  const typed = word.toLowerCase();
  const ranked = candidates
    .map((candidate) => ({ candidate, far: distance(typed, candidate.toLowerCase()) }))
    .sort((a, b) => a.far - b.far);
  const best = ranked[0];
  return best && best.far <= Math.max(1, Math.floor(best.candidate.length / 3)) ? best.candidate : undefined;
}

/** '; did you mean nichrome?', or nothing where no candidate is near. */
export function didYouMean(word: string, candidates: readonly string[]): string {
  const near = nearMiss(word, candidates);
  return near === undefined ? '' : `; did you mean ${near}?`;
}
