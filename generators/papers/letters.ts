import type { Random } from '../random.ts';
import { type Option, rightPlace } from './options.ts';

/** Where the right options of one version stand, kept in balance. */
export interface Letters {
  /** The set among these whose right option stands where the fewest do, and whether no place has fewer. */
  best(sets: readonly Option[][]): { options: Option[]; isLeast: boolean } | undefined;
}

/**
 * The letters that a version has left, after these questions of it: among questions with as many options, so that four
 * options do not point to the letter that three options cannot have.
 */
export function letters(before: readonly (readonly Option[])[], random: Random): Letters {
  return {
    best(sets) {
      const [first] = sets;
      if (!first) return undefined;
      const counts = first.map(() => 0);
      for (const options of before) if (options.length === first.length) counts[rightPlace(options)]!++;
      const [options] = random.shuffle(sets).sort((a, b) => counts[rightPlace(a)]! - counts[rightPlace(b)]!);
      return { options: options!, isLeast: counts[rightPlace(options!)] === Math.min(...counts) };
    },
  };
}
