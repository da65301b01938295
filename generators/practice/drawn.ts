import { drawings } from '../experiments/drawings.ts';
import type { Layout } from '../experiments/layout.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Program } from '../quantities/program.ts';
import type { Fillings } from './fillings.ts';
import type { PracticeSet } from './make-set.ts';

/** The drawn instruments of a set, by their slots 'drawn:0', 'drawn:1', … */
export function drawnSlots({ sheet }: PracticeSet, program: Program, layout: Layout, words: FigureWords): Fillings {
  const { readings, form, conventions } = sheet;
  const drawn = drawings(program.steps, { readings, form, drawn: conventions.drawn, decided: layout.decided ?? [] }, 'drawn', words);
  return Object.fromEntries(drawn.map(({ drawing }, i) => [`drawn:${i}`, drawing.svg]));
}
