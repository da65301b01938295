import type { Marked } from '../../marking/award.ts';
import type { Decimal } from '../../marking/entry.ts';
import { accepted, sum } from '../../marking/feedback.ts';
import { waysInWords } from '../../marking/remarks.ts';
import { shownMarks } from '../../marking/shown.ts';
import type { Standing } from '../../marking/standing.ts';
import { type MarkingWords, whyUnreadable } from '../../marking/words.ts';
import { fill } from '../../quantities/spoken.ts';
import type { TypingWords } from './data.ts';

/** What is said beside an answer: how it stands, why, and its marks. */
export interface Said {
  stands: string;
  note: string;
  marks: string;
}

export function saidOf(answer: Marked, standing: Standing, decimal: Decimal, words: TypingWords): Said {
  const { earned, column } = answer;
  const marks = fill(words.feedback.of, { earned: shownMarks(sum(earned)), full: shownMarks(sum(column.marks)) });
  return { stands: stands(answer, standing, words), note: notes(answer, decimal, words).join(' '), marks: answer.verdict === 'absent' ? '' : marks };
}

function stands({ entry }: Marked, standing: Standing, words: TypingWords): string {
  const { typing } = words;
  switch (standing) {
    case 'right':
      return typing.right;
    case 'carried forward':
      return typing.carried;
    case 'right by the key':
      return typing.byTheKey;
    case 'wrong':
      return typing.wrong;
    case 'unreadable':
      return fill(typing.unreadable, { why: entry.is === 'unreadable' ? whyUnreadable(entry, words) : '' });
    case 'not entered':
      return '';
    case 'left blank':
      return typing.leftBlank;
    case 'struck out':
      return typing.struckOut;
  }
}

function notes(answer: Marked, decimal: Decimal, words: TypingWords): string[] {
  const { typing } = words;
  if (answer.entry.is === 'not entered') return [typing.notEntered];
  const { verdict, wrongUnit, unitMissing, earned, column, extraFigures } = answer;
  const fewerFigures = verdict !== 'absent' && earned.figures < column.marks.figures && !answer.explanations.some(({ slip }) => slip === 'rounded too far');
  return [
    ...(verdict === 'wrong' ? [whatHappened(answer, words), fill(typing.accepted, { range: withMark(accepted(answer, words as MarkingWords), decimal) })] : []),
    ...(wrongUnit ? [fill(typing.unitWrong, { unit: column.unit })] : []),
    ...(unitMissing && column.marks.unit > 0 ? [unitMissing === 'costs' ? typing.unitCosts : typing.unitHasCost] : []),
    ...(fewerFigures && extraFigures !== 0 ? [extraFigures > 0 ? typing.tooMany : typing.tooFew] : []),
  ];
}

function whatHappened({ explanations, column }: Marked, words: TypingWords): string {
  const ways = waysInWords(explanations, words as MarkingWords, column.rows);
  if (ways.length === 0) return words.typing.unexplained;
  if (ways.length === 1) return ways[0]!.says;
  return fill(words.typing.either, { ways: ways.map(({ says }, i) => fill(words.feedback.way, { number: i + 1, says })).join(' ') });
}

/** Numbers of the page have the decimal sign that is typed into it. */
const withMark = (numbers: string, decimal: Decimal) => (decimal === 'comma' ? numbers.replaceAll('.', ',') : numbers);
