import type { Program } from '../quantities/program.ts';
import { type SpokenWords, fill } from '../quantities/spoken.ts';
import { type Line, symbolLine } from '../quantities/working.ts';
import type { CopyQuestion } from './copies.ts';
import { wrote } from './feedback.ts';
import { rowName } from './heads.ts';
import type { StudentMarks } from './mark-class.ts';
import { shownNumber } from './shown.ts';
import type { MarkingWords } from './words.ts';

/** The readings and answers of two students side by side, for the teacher to ask. */
export interface CopyTable {
  says: string;
  rolls: [string, string];
  readings: { symbol: Line; one: string; other: string }[];
  answers: { symbol: Line; row?: number | string; one: string; other: string; same: boolean }[];
}

export function copyTable({ student, other, same, telling }: CopyQuestion, programFor: (student: StudentMarks) => Program, spoken: SpokenWords, words: MarkingWords): CopyTable {
  const program = programFor(student);
  const says = fill(words.class.copiesLine, { roll: student.issue.roll, other: other.issue.roll, count: same.length, telling: telling.length });
  const readings = program.steps.filter(({ kind }) => kind === 'reading');
  const read = ({ issue }: StudentMarks, id: string) => [issue.sheet.readings[id] ?? []].flat().map(shownNumber).join(', ');
  return {
    says,
    rolls: [student.issue.roll, other.issue.roll],
    readings: readings.map(({ id }) => ({ symbol: symbolLine(program, id, spoken), one: read(student, id), other: read(other, id) })),
    answers: student.answers.map((answer, i) => ({
      symbol: symbolLine(program, answer.column.id, spoken),
      ...(answer.column.inTable && { row: rowName(answer.column.row, answer.column.rows) }),
      one: wrote(answer, words),
      other: wrote(other.answers[i]!, words),
      same: same.includes(i),
    })),
  };
}
