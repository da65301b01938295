import { type SpokenWords, fill } from '../quantities/spoken.ts';
import type { Program } from '../quantities/program.ts';
import type { Marked } from './award.ts';
import { accepted, wrote } from './feedback.ts';
import { headOf } from './heads.ts';
import { ownFigures } from './judge.ts';
import type { StudentMarks } from './mark-class.ts';
import { type Reason, reasons } from './reasons.ts';
import type { MarkingWords } from './words.ts';

/** An answer that is wrong by a little, and why its range ends where it does. */
export interface NearMiss {
  says: string;
  /** Nothing where its ends come from rounding that answer alone. */
  why?: Reason;
}

/** Wrong by no more than the range is wide: the answers that a student may come and ask about. */
export function nearMisses(students: readonly StudentMarks[], programFor: (student: StudentMarks) => Program, spoken: SpokenWords, words: MarkingWords): NearMiss[] {
  return students.flatMap((student) =>
    student.answers.filter(isNear).map((answer): NearMiss => {
      const { issue, answers } = student;
      const { column } = answer;
      const program = programFor(student);
      const own = ownFigures(answers.map((each) => each.column), answers.map((each) => each.entry));
      const why = reasons({ sheet: issue.sheet, program, own, unread: issue.sheet.conventions.drawn }, spoken, words.reasons)(column.id, column.row);
      const name = headOf(column, spoken.symbols, words.heads);
      return {
        says: fill(words.class.whyLine, { roll: issue.roll, answer: name, value: wrote(answer, words), ...ends(answer, words) }),
        ...(why && { why }),
      };
    }),
  );
}

function isNear({ verdict, value, accept: [low, high], explanations }: Marked): boolean {
  if (verdict !== 'wrong' || value === undefined || explanations.length > 0 || !Number.isFinite(high - low)) return false;
  const beyond = Math.max(low - Number(value), Number(value) - high);
  return beyond <= high - low;
}

function ends(answer: Marked, words: MarkingWords): { low: string; high: string } {
  const [low = '', high = low] = accepted(answer, { ...words, feedback: { ...words.feedback, from: '{low}\n{high}' } }).split('\n');
  return { low, high };
}
