import type { QuestionView, Sentence, Shown } from '../questions/view.ts';
import { readsOff } from './figures.ts';
import type { Made } from './item.ts';

/** The words of a case; a blank is the symbol of a quantity in letters and figures: {l_1}, {rho}. */
export interface StoryWords {
  /** What is told first. */
  tells: string;
  /** What each part asks. */
  parts: readonly string[];
}

/** A case in words: each given stands with its value where it is told first, and by its symbol after. */
export function tellCase({ tells, parts }: StoryWords, made: readonly { made: Made; view: QuestionView }[]): { story: Sentence; parts: Sentence[] } {
  if (parts.length !== made.length) throw new Error(`a story of ${made.length} parts has words for ${parts.length}`);
  const blanks = Object.assign({}, ...made.map(symbolsOf).reverse()) as Record<string, Shown>;
  const told = new Set<string>();
  const say = (sentence: string): Sentence => ({
    blanks,
    sentence: sentence.replace(/\{(\w+)\}/g, (blank, name: string) => {
      if (told.has(name) || blanks[`${name}_told`] === undefined) return blank;
      told.add(name);
      return `{${name}_told}`;
    }),
  });
  return { story: say(tells), parts: parts.map(say) };
}

/** The symbols of a part, and its givens with their values but for those that a drawing shows or an earlier part finds. */
function symbolsOf({ made: { question: { direction }, form, carried }, view: { stem, givens } }: { made: Made; view: QuestionView }): Record<string, Shown> {
  const hidden = [...carried, ...(form === 'figure' ? readsOff(direction) : [])];
  const value = (id: string) => (stem.blanks[`${id}_told`] as Shown | undefined) ?? givens.find((given) => given.id === id)?.value;
  const entries = Object.entries(direction.body.quantities).flatMap(([id, { tex }]): [string, Shown][] => {
    if (tex === undefined) return [];
    const name = tex.replace(/[\\{}]/g, '');
    const told = hidden.includes(id) ? undefined : value(id);
    return [[name, stem.blanks[id] as Shown], ...(told ? [[`${name}_told`, told] as [string, Shown]] : [])];
  });
  return Object.fromEntries(entries);
}
