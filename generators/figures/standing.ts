import { fill } from './fill.ts';
import type { StandingWords } from './words.ts';

/** Nearer to a mark than this part of a division, it stands at the mark as far as an eye can tell. */
const blur = 0.05;

/**
 * Where something stands on a scale, in words that count divisions from a numbered mark and never give the reading.
 * @param divisions from the scale's zero, not negative
 * @param every divisions from one number to the next
 * @param step what the numbers rise by
 */
export function standing(divisions: number, every: number, step: number, words: StandingWords): string {
  const nearest = Math.round(divisions);
  if (Math.abs(divisions - nearest) < blur) {
    const n = nearest % every;
    return fill(n === 0 ? words.atNumber : words.atMark, { n, number: ((nearest - n) / every) * step });
  }
  const below = Math.floor(divisions);
  const n = below % every;
  const place = { n, next: n + 1, near: nearest - below + n, number: ((below - n) / every) * step };
  return fill(Math.abs(divisions - below - 0.5) < blur ? words.midway : words.between, place);
}
