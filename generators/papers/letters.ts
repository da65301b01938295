import type { Random } from '../random.ts';
import { MOST, type Option, rightPlace } from './options.ts';

/** Where the right options of one version stand, kept in balance. */
export interface Letters {
  /** The set among these whose right option stands where the fewest do, and whether no place has fewer. */
  best(sets: readonly Option[][]): { options: Option[]; isLeast: boolean } | undefined;
  take(options: readonly Option[]): void;
}

export function letters(random: Random): Letters {
  const counts = Array.from({ length: MOST }, () => 0);
  return {
    best(sets) {
      const [first] = sets;
      if (!first) return undefined;
      const least = Math.min(...counts.slice(0, first.length));
      const [options] = random.shuffle(sets).sort((a, b) => counts[rightPlace(a)]! - counts[rightPlace(b)]!);
      return { options: options!, isLeast: counts[rightPlace(options!)] === least };
    },
    take: (options) => void counts[rightPlace(options)]!++,
  };
}
