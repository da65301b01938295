import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, quantityLine } from '../quantities/working.ts';
import { round } from '../quantities/written.ts';

/** A number for the teacher's eye alone, to so many figures: a true value, an uncertainty. */
export function roughly(value: number, unitName: string, words: SpokenWords, figures = 4): Line {
  return quantityLine(round(value, { figures }, 'even'), unitName, words);
}
