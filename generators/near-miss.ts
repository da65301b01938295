import { distance } from 'fastest-levenshtein';

/** Words as short as this are all near each other. */
const SHORT = 3;
/** Words that begin alike, such as numbers of standards, may differ more at their end. */
const SAME_START = 4;

/**
 * The candidate that a mistyped word most likely meant, case ignored; undefined where none is near.
 * Where all are numbers, the one nearest in size.
 */
export function nearMiss(word: string, candidates: readonly string[]): string | undefined {
  const others = candidates.filter((candidate) => candidate !== word);
  const near = [word, ...others].every(isNumber)
    ? others.map((candidate) => ({ candidate, far: Math.abs(Number(candidate) - Number(word)) }))
    : others.map((candidate) => lettersApart(word, candidate)).filter(({ far, most }) => far <= most);
  return near.sort((a, b) => a.far - b.far)[0]?.candidate;
}

/** '; did you mean nichrome?', or nothing where no candidate is near. */
export function didYouMean(word: string, candidates: readonly string[]): string {
  const near = nearMiss(word, candidates);
  return near === undefined ? '' : `; did you mean ${near}?`;
}

const isNumber = (word: string) => word.trim() !== '' && Number.isFinite(Number(word));

/** How many letters apart two words are, and how many a slip may change; a swapped pair counts as two. */
function lettersApart(word: string, candidate: string) {
  const [typed, meant] = [word.toLowerCase(), candidate.toLowerCase()];
  const short = Math.min(typed.length, meant.length) <= SHORT;
  const alike = typed.slice(0, SAME_START) === meant.slice(0, SAME_START);
  return { candidate, far: distance(typed, meant), most: short ? 1 : alike ? 3 : 2 };
}
