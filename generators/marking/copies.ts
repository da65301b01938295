import type { Marked } from './award.ts';
import { lastPlace } from './last-place.ts';
import type { StudentMarks } from './mark-class.ts';
import { within } from './reach.ts';

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
  const asked = students.flatMap((student): CopyQuestion[] => {
    const wrong = placesOf(student, ({ verdict }) => verdict === 'wrong');
    if (wrong.length < TELL_WITHOUT_OWN) return [];
    const found = students.flatMap((other) => (other === student || other.absent ? [] : compare(student, other, wrong)));
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

function compare(student: StudentMarks, other: StudentMarks, wrong: readonly number[]): CopyQuestion[] {
  const telling = wrong.filter((i) => isSame(student.answers[i]!, other.answers[i]!));
  if (telling.length < TELL_WITHOUT_OWN) return [];
  const written = placesOf(student, ({ value }) => value !== undefined);
  const same = written.filter((i) => isSame(student.answers[i]!, other.answers[i]!));
  const nothingOwn = same.length === written.length && written.length >= FEWEST;
  return telling.length >= TELL || nothingOwn ? [{ student, other, same, telling }] : [];
}

/** What the other wrote, to one unit in the last place that both have, or what is accepted on the other's sheet; a number that says next to nothing is no sign. */
function isSame(mine: Marked, theirs: Marked): boolean {
  if (mine.value === undefined) return false;
  const value = Number(mine.value);
  const [low, high] = theirs.accept;
  if (within(value, theirs.accept) && high - low <= NARROW * Math.abs(value)) return true;
  if (theirs.value === undefined) return false;
  const other = Number(theirs.value);
  const unit = Number(`1e${Math.max(lastPlace(mine.value), lastPlace(theirs.value))}`);
  return value === other || (unit <= Math.abs(value) && within(value, [other - unit, other + unit]));
}

/** An accept range wider than this part of its value fits by chance. */
const NARROW = 0.05;
