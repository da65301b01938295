import { UserMistake, type Mistake } from '../mistake.ts';
import { allMistakes } from './all-mistakes.ts';
import { columnOf, findColumns } from './columns.ts';
import { csvRows } from './csv.ts';
import type { KnownWires } from './known.ts';
import { readStudent, type Student } from './student.ts';
import { decodeText } from './text.ts';

export type { Student };

export interface ClassList {
  students: Student[];
  /** What the user should know about the way the file was read. */
  notices: string[];
}

const MOST_STUDENTS = 2000;
const MOST_MEGABYTES = 4;

/**
 * The students of a class list, a CSV file as a spreadsheet exports it: UTF-8, UTF-16 or Windows-1252; comma, semicolon
 * or tab; columns roll and name, and perhaps wire, in any order among others.
 * Throws a UserMistake that lists every problem of the file with its row and column.
 */
export function readClassList(bytes: Uint8Array, fileName: string, known: KnownWires): ClassList {
  const refuse = (what: string) => new UserMistake([{ file: fileName, what }]);
  if (bytes.length > MOST_MEGABYTES * 1e6) throw refuse(`the file is larger than ${MOST_MEGABYTES} MB; give the class list alone`);
  const { text, notices } = decodeText(bytes, fileName);
  const [header, ...rows] = csvRows(text, fileName, (cell) => columnOf(cell) !== undefined);
  if (!header) throw refuse('the file is empty; give a header row (roll, name) and one row for each student');
  if (rows.length > MOST_STUDENTS) throw refuse(`${rows.length} students are more than the ${MOST_STUDENTS} of a pack; split the list`);
  const found = findColumns(header);
  const read = 'columns' in found ? rows.map((row) => readStudent(row, found.columns, header.cells.length, known)) : [];
  const students = read.map(({ student }) => student);
  const mistakes: Mistake[] = [
    ...('mistakes' in found ? found.mistakes : []),
    ...('columns' in found && rows.length === 0 ? [{ what: 'no students below the header; add one row for each student' }] : []),
    ...read.flatMap((row) => row.mistakes),
    ...doubles(students),
  ];
  if (mistakes.length > 0) throw allMistakes(mistakes.map((mistake) => ({ file: fileName, ...mistake })));
  return { students, notices: [...notices, ...('notices' in found ? found.notices : [])] };
}

function doubles(students: readonly Student[]): Mistake[] {
  const first = new Map<string, number>();
  return students.flatMap(({ roll, row }) => {
    const key = sameRoll(roll);
    const earlier = first.get(key) ?? row;
    first.set(key, earlier);
    return key === '' || earlier === row
      ? []
      : [{ row, field: 'roll', what: `roll ${roll} appears twice (first in row ${earlier}); give one of them another number` }];
  });
}

/** Rolls that look the same are the same: composed letters, no invisible characters. */
function sameRoll(roll: string): string {
  return roll.normalize('NFC').replace(/\p{Cf}/gu, '').trim();
}
