import { fill } from '../../quantities/spoken.ts';
import type { Setting } from '../bench.ts';
import type { BenchWords } from './data.ts';

/** What the needle shows, in words: the nearest whole division. */
export function needleInWords(at: number, divisions: number, { isPressed }: Setting, words: BenchWords): string {
  if (!isPressed) return words.lifted;
  const size = Math.round(Math.abs(at));
  if (size === 0) return words.zero;
  if (size >= divisions) return at < 0 ? words.stopLeft : words.stopRight;
  return fill(at < 0 ? words.left : words.right, { divisions: size });
}
