import type { Explanation } from '../marking/slip.ts';
import { type MarkingWords, slipWords } from '../marking/words.ts';
import type { Digits } from '../quantities/step.ts';
import { fill } from '../quantities/spoken.ts';
import type { Answer } from './check.ts';
import type { PracticeWords } from './page/data.ts';
import type { Place } from './places.ts';

interface Words {
  practice: Pick<PracticeWords, 'says'>;
  marking: Pick<MarkingWords, 'plain' | 'slips'>;
}

/** A remark on a value, and how many lines of the working go with it as a hint. */
export interface Remark {
  says: string;
  lines: number;
}

/** How far the help at a place has gone: how often it was wrong, how many lines do not yet say the value, and what to look at first. */
export interface Hints {
  depth: number;
  hints: number;
  look?: string;
}

/** What is said of a value; a wrong one that no slip explains gets a deeper hint each time: what to look at, the formula, the numbers, all of the working. */
export function remarkOn(answer: Answer, place: Place, { depth: wrongs, hints, look }: Hints, words: Words): Remark {
  const { says } = words.practice;
  switch (answer.is) {
    case 'empty':
      return { says: '', lines: 0 };
    case 'unreadable':
      return { says: says.unreadable, lines: 0 };
    case 'right':
      return { says: rightWords(answer, place, says), lines: 0 };
    case 'wrong':
      if (answer.wrongUnit) return { says: fill(says.unit, { unit: place.unit }), lines: 0 };
      if (answer.explanations.length > 0) return { says: slipsInWords(answer.explanations, words), lines: 0 };
      if (place.kind === 'drawn') return { says: says.look, lines: 0 };
      if (look !== undefined && wrongs <= 1) return { says: look, lines: 0 };
      const depth = look === undefined ? wrongs : wrongs - 1;
      if (depth <= 1) return { says: says.formula, lines: 1 };
      return depth === 2 ? { says: says.numbers, lines: hints } : { says: says.still, lines: hints };
  }
}

function rightWords({ byTheKey, extraFigures, wrongUnit }: Extract<Answer, { is: 'right' }>, place: Place, says: Words['practice']['says']): string {
  if (wrongUnit) return fill(says.unit, { unit: place.unit });
  if (byTheKey) return says.byTheKey;
  if (extraFigures === 0) return says.right;
  return fill(extraFigures > 0 ? says.tooMany : says.tooFew, { digits: digitsInWords(place.digits, says) });
}

const digitsInWords = (digits: Digits, says: Words['practice']['says']) =>
  'decimals' in digits ? fill(says.decimals, { count: digits.decimals }) : fill(says.figures, { count: digits.figures });

/** The slip with what to do about it, or all that give the same value. */
export function slipsInWords(explanations: readonly Explanation[], words: Words): string {
  const { says } = words.practice;
  const ways = [...new Map(explanations.map((each) => [JSON.stringify([each.slip, each.with?.slip]), each])).values()].map((each) => wordsOf(each, words));
  const [first] = ways;
  if (ways.length === 1) return fill(says.one, { says: first!.says, do: first!.do }).trim();
  return fill(says.either, { ways: ways.map((way) => way.says).join(' ') });
}

function wordsOf({ slip, row, with: second }: Explanation, { practice: { says }, marking }: Words): { says: string; do: string } {
  const spoken = (id: string) => slipWords(marking as MarkingWords, id);
  const blanks = { row: row ?? '' };
  const one = { says: fill(spoken(slip).says, blanks), do: fill(spoken(slip).do, blanks) };
  return second ? { says: fill(says.both, { one: one.says, other: fill(spoken(second.slip).says, blanks) }), do: one.do } : one;
}
