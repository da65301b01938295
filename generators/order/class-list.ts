import { UserMistake, type Mistake } from '../mistake.ts';
import { columnOf, findColumns, type Columns } from './columns.ts';
import { csvRows, type CsvRow } from './csv.ts';
import type { KnownWires } from './known.ts';
import { quote } from './quote.ts';
import { decodeText } from './text.ts';
import { parseWireAsk, type WireAsk } from './wire-ask.ts';

/** One student of a class list. Name and roll are outside text: escape them wherever they are shown. */
export interface Student {
  /** Kept as text: 007 stays 007. */
  roll: string;
  name: string;
  /** A wire for this student alone. */
  wire?: WireAsk;
  /** Row of the spreadsheet, from 1. */
  row: number;
}

export interface ClassList {
  students: Student[];
  /** What the user should know about the way the file was read. */
  notices: string[];
}

const MOST_STUDENTS = 2000;
const MOST_BYTES = 4_000_000;
const LONGEST = { roll: 40, name: 300 } as const;

/**
 * The students of a class list, a CSV file as a spreadsheet exports it: UTF-8, UTF-16 or Windows-1252; comma, semicolon
 * or tab; columns roll and name, and perhaps wire, in any order among others.
 * Throws a UserMistake that lists every problem of the file with its row and column.
 */
export function readClassList(bytes: Uint8Array, fileName: string, known: KnownWires): ClassList {
  const refuse = (what: string) => new UserMistake([{ file: fileName, what }]);
  if (bytes.length > MOST_BYTES) throw refuse(`the file is larger than ${MOST_BYTES / 1_000_000} MB; give the class list alone`);
  const { text, notices } = decodeText(bytes, fileName);
  const [header, ...rows] = csvRows(text, fileName, (cell) => columnOf(cell) !== undefined);
  if (!header) throw refuse('the file is empty; give a header row (roll, name) and one row for each student');
  const mistakes: Mistake[] = [];
  const columns = findColumns(header, fileName, mistakes);
  if (rows.length === 0) mistakes.push({ file: fileName, what: 'no students below the header; add one row for each student' });
  if (rows.length > MOST_STUDENTS) {
    mistakes.push({ file: fileName, what: `${rows.length} students are more than one pack takes (${MOST_STUDENTS}); split the list` });
  }
  const students = columns ? rows.map((row) => student(row, columns, header.cells.length, known, fileName, mistakes)) : [];
  findDoubles(students, fileName, mistakes);
  if (mistakes.length > 0) throw new UserMistake(mistakes.toSorted((a, b) => (a.row ?? 0) - (b.row ?? 0)));
  return { students, notices };
}

function student({ row, cells }: CsvRow, columns: Columns, width: number, known: KnownWires, file: string, mistakes: Mistake[]): Student {
  const add = (field: string, what: string) => mistakes.push({ file, row, field, what });
  if (cells.slice(width).some((cell) => cell !== '')) {
    mistakes.push({ file, row, what: `${cells.length} cells where the header has ${width}; put quotation marks round a cell that holds a comma` });
  }
  const read = (field: 'roll' | 'name') => {
    const value = (cells[columns[field]] ?? '').replace(/[\t\r\n]+/g, ' ');
    const wrong = wrongText(value, field);
    if (wrong) add(field, wrong);
    return value;
  };
  const out: Student = { roll: read('roll'), name: read('name'), row };
  const asked = columns.wire === undefined ? '' : (cells[columns.wire] ?? '');
  if (asked === '') return out;
  const wire = parseWireAsk(asked, known);
  if ('ask' in wire) return { ...out, wire: wire.ask };
  for (const problem of wire.problems) add('wire', problem);
  return out;
}

function wrongText(value: string, field: 'roll' | 'name'): string | undefined {
  if (value === '') return `the ${field} is blank; fill it in, or delete the row`;
  if (value.includes('\ufffd')) return `${quote(value)} has lost a letter on the way (�); type it again`;
  if (/\p{Cc}/u.test(value)) return `${quote(value)} holds a control character, which cannot be printed; type it again`;
  if ([...value].length > LONGEST[field]) return `${quote(value)} is longer than ${LONGEST[field]} letters; shorten it`;
  return undefined;
}

function findDoubles(students: readonly Student[], file: string, mistakes: Mistake[]): void {
  const first = new Map<string, number>();
  for (const { roll, row } of students) {
    const key = roll.normalize('NFC');
    const earlier = first.get(key);
    if (earlier === undefined) first.set(key, row);
    else if (roll !== '') {
      mistakes.push({ file, row, field: 'roll', what: `roll ${roll} appears twice (first in row ${earlier}); give one of them another number` });
    }
  }
}
