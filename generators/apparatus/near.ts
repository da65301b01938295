import { distance } from 'fastest-levenshtein';
import { UserMistake } from '../mistake.ts';

/** More letters than this apart, or than half the word, are not a slip of the pen. */
const FARTHEST = 3;

/** 'no material "nicrome"; did you mean nichrome?', or the whole list where nothing is near. Numbers are near by their size. */
export function unknownName(kind: string, name: string, known: readonly string[]): UserMistake {
  const near = nearest(name, known);
  const help = near === undefined ? `choose one of ${known.join(', ')}` : `did you mean ${near}?`;
  return new UserMistake(`no ${kind} "${name}"; ${help}`);
}

function nearest(name: string, known: readonly string[]): string | undefined {
  const numbers = [name, ...known].every((each) => Number.isFinite(Number(each)));
  const apart = (each: string) =>
    numbers ? Math.abs(Number(each) - Number(name)) : distance(each.toLowerCase(), name.toLowerCase());
  const [best] = [...known].sort((a, b) => apart(a) - apart(b));
  const limit = numbers ? Infinity : Math.min(FARTHEST, name.length / 2);
  return best !== undefined && apart(best) <= limit ? best : undefined;
}
