import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { fill } from '../quantities/spoken.ts';
import type { Digits, Interval, Written } from '../quantities/step.ts';
import { type Line, symbolLine } from '../quantities/working.ts';
import { roundOutward } from '../quantities/written.ts';
import type { Issue } from '../sheets/issue.ts';
import type { Marked } from './award.ts';
import { alive } from './csv-text.ts';
import { headOf, rowName } from './heads.ts';
import type { StudentMarks } from './mark-class.ts';
import { MARK_KINDS } from './mark-kinds.ts';
import { remarks } from './remarks.ts';
import type { Marks } from './scheme.ts';
import { finer, shownMarks, shownNumber, shownQuantity } from './shown.ts';
import type { MarkingWords } from './words.ts';

/** One line of a feedback slip. */
export interface FeedbackLine {
  symbol: Line;
  /** Of a table, as it calls the row. */
  row?: number | string;
  wrote: string;
  /** Only where the value is wrong. */
  accepted: string;
  marks: string;
}

/** What one student gets back. */
export interface FeedbackSlip {
  name: string;
  roll: string;
  code: string;
  total: string;
  incomplete: boolean;
  /** Something was left blank or struck out, or is not entered. */
  blanks: boolean;
  lines: FeedbackLine[];
  remarks: string[];
}

export function feedbackSlip(student: StudentMarks, program: Program, spoken: SpokenWords, words: MarkingWords): FeedbackSlip {
  const { issue, answers, total, full } = student;
  return {
    name: nameWithSitting(issue, words),
    roll: issue.roll,
    code: issue.code,
    total: fill(words.feedback.total, { total: shownMarks(total), full: shownMarks(full) }),
    incomplete: student.incomplete,
    blanks: answers.some(({ verdict }) => verdict === 'absent'),
    lines: answers.map((answer, i) => line(answer, student.texts[i]!, program, spoken, words)),
    remarks: remarks(answers, (answer) => headOf(answer.column, spoken.symbols, words.heads), words),
  };
}

/** A student's further sheets say which sitting they are of. */
export function nameWithSitting({ name, sitting }: Pick<Issue, 'name' | 'sitting'>, { heads }: Pick<MarkingWords, 'heads'>): string {
  return sitting === 1 ? name : fill(heads.sitting, { name, sitting });
}

function line(answer: Marked, text: string, program: Program, spoken: SpokenWords, words: MarkingWords): FeedbackLine {
  const { column, earned } = answer;
  return {
    symbol: symbolLine(program, column.id, spoken),
    ...(column.inTable && { row: rowName(column.row, column.rows) }),
    // A unit of another kind stands as it was typed.
    wrote: answer.wrongUnit ? alive(text).trim() : wrote(answer, words),
    accepted: answer.verdict === 'wrong' ? accepted(answer, words) : '',
    marks: fill(words.feedback.of, { earned: shownMarks(sum(earned)), full: shownMarks(sum(column.marks)) }),
  };
}

export const sum = (marks: Marks): number => MARK_KINDS.reduce((total, kind) => total + marks[kind], 0);

/** The value in the unit of the step, the unit where one was written or is assumed. */
export function wrote({ entry, value, column, unitMissing, wrongUnit }: Marked, words: MarkingWords): string {
  if (entry.is === 'number') return unitMissing || wrongUnit ? shownNumber(value!) : shownQuantity(value!, column.unit);
  return { 'not entered': words.feedback.notEntered, 'left blank': words.feedback.leftBlank, 'struck out': words.feedback.struckOut, unreadable: '' }[entry.is];
}

/** The range to accept, its ends outward, one figure finer than the answer; more where a wrong value would seem to lie in it. */
export function accepted({ accept, column, value }: Pick<Marked, 'accept' | 'column' | 'value'>, words: MarkingWords): string {
  const [low, high] = accept.every(Number.isFinite) ? rangeWithout(Number(value), accept, finer(column.digits), MOST_FINER) : ['0', '0'];
  return low === high ? shownQuantity(low, column.unit) : fill(words.feedback.from, { low: shownNumber(low), high: shownQuantity(high, column.unit) });
}

const MOST_FINER = 6;

function rangeWithout(value: number, accept: Interval, digits: Digits, steps: number): readonly [low: Written, high: Written] {
  const ends = roundOutward(accept, digits);
  const seemsInside = value >= Number(ends[0]) && value <= Number(ends[1]);
  return seemsInside && steps > 0 ? rangeWithout(value, accept, finer(digits), steps - 1) : ends;
}
