import type { Marked } from './award.ts';
import { lastPlace } from './last-place.ts';
import type { StudentMarks } from './mark-class.ts';

/**
 * Answers of one student that fit another's sheet better than the own one: a question for the teacher. Two who worked
 * together, a sheet taken by mistake and a row typed in the wrong place look the same.
 */
export interface CopyQuestion {
  student: StudentMarks;
  other: StudentMarks;
  /** Places of the answers that are the other's. */
  same: number[];
  /** Those among them that do not follow on the own sheet, so that they tell. */
  telling: number[];
}

/** Three figures that are wrong here and right there are no chance; two are not, where nothing speaks for the own sheet. */
const TELL = 3;
const TELL_WITHOUT_OWN = 2;
/** Students who worked together may all fit; more sheets than these say no more. */
const MOST_SHEETS = 3;
/** Fewer answers than these do not say that nothing speaks for the own sheet. */
const FEWEST = 5;

/** For each student whose answers raise the question, the sheets that they fit best. */
export function copies(students: readonly StudentMarks[]): CopyQuestion[] {
  const figures = figuresOf(students);
  const asked = students.flatMap((student, i): CopyQuestion[] => {
    const wrong = placesOf(student, ({ verdict }) => verdict === 'wrong');
    if (wrong.length < TELL_WITHOUT_OWN) return [];
    const found: CopyQuestion[] = [];
    // A plain loop: a large class makes millions of these comparisons.
    for (let j = 0; j < students.length; j++) {
      if (j === i || students[j]!.absent) continue;
      const other = students[j]!;
      const question = compare(figures, i, j, wrong, (column) => shareSlip(student.answers[column]!, other.answers[column]!));
      if (question) found.push({ student, other, ...question });
    }
    return found.sort((a, b) => b.telling.length - a.telling.length || b.same.length - a.same.length).slice(0, MOST_SHEETS);
  });
  return asked.filter((question, i) => !asked.some((other, j) => other.student === question.other && other.other === question.student && tellsMore(other, question, j < i)));
}

/** Of two that name each other, the one whose answers are more at odds with the own sheet is asked about. */
function tellsMore(one: CopyQuestion, other: CopyQuestion, first: boolean): boolean {
  const more = one.telling.length - other.telling.length;
  return more > 0 || (more === 0 && first);
}

function placesOf({ answers }: StudentMarks, is: (answer: Marked) => boolean): number[] {
  return answers.flatMap((answer, i) => (is(answer) ? [i] : []));
}

/**
 * The figures of a class, one answer after the other: the value, one in its last place, and what is accepted on the own
 * sheet, where that says something. NaN where there is nothing, which is the same as nothing.
 */
interface Figures {
  columns: number;
  value: Float64Array;
  unit: Float64Array;
  low: Float64Array;
  high: Float64Array;
}

function figuresOf(students: readonly StudentMarks[]): Figures {
  const all = students.flatMap(({ answers }) => answers);
  const narrow = ({ accept: [low, high] }: Marked) => high - low <= NARROW * Math.max(Math.abs(low), Math.abs(high));
  return {
    columns: students[0]?.answers.length ?? 0,
    value: Float64Array.from(all, ({ value }) => (value === undefined ? NaN : Number(value))),
    unit: Float64Array.from(all, ({ value }) => (value === undefined ? NaN : Number(`1e${lastPlace(value)}`))),
    low: Float64Array.from(all, (one) => (narrow(one) ? one.accept[0] : NaN)),
    high: Float64Array.from(all, (one) => (narrow(one) ? one.accept[1] : NaN)),
  };
}

function compare(figures: Figures, i: number, j: number, wrong: readonly number[], bySlip: (column: number) => boolean): Pick<CopyQuestion, 'same' | 'telling'> | undefined {
  let alike = 0;
  for (let k = 0; k < wrong.length; k++) if (isSame(figures, i, j, wrong[k]!)) alike++;
  if (alike < TELL_WITHOUT_OWN) return undefined;
  const telling = wrong.filter((column) => isSame(figures, i, j, column) && !bySlip(column));
  if (telling.length < TELL_WITHOUT_OWN) return undefined;
  const written = Array.from({ length: figures.columns }, (_, column) => column).filter((column) => !Number.isNaN(figures.value[i * figures.columns + column]!));
  const same = written.filter((column) => isSame(figures, i, j, column));
  const nothingOwn = same.length === written.length && written.length >= FEWEST;
  return telling.length >= TELL || nothingOwn ? { same, telling } : undefined;
}

/** Two who made the same slip, each on the own readings, have like values without knowing of each other. */
export function shareSlip(mine: Marked, theirs: Marked): boolean {
  return mine.explanations.some(({ slip, at }) => theirs.explanations.some((other) => other.slip === slip && other.at === at));
}

/** What the other wrote, to one unit in the last place that both have, or what is accepted on the other's sheet; a number that says next to nothing is no sign. */
function isSame({ columns, value, unit, low, high }: Figures, i: number, j: number, column: number): boolean {
  const [mine, theirs] = [i * columns + column, j * columns + column];
  const own = value[mine]!;
  const other = value[theirs]!;
  if (own === other || (own >= low[theirs]! && own <= high[theirs]!)) return true;
  const place = Math.max(unit[mine]!, unit[theirs]!);
  return place <= Math.abs(own) && Math.abs(own - other) <= place * JUST_OVER;
}

/** Decimal fractions that differ by one unit differ by a trifle more or less in binary. */
const JUST_OVER = 1 + 1e-6;

/** An accept range wider than this part of its value fits by chance. */
const NARROW = 0.05;
