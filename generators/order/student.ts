import type { Mistake } from '../mistake.ts';
import type { Columns } from './columns.ts';
import type { CsvRow } from './csv.ts';
import type { KnownWires } from './known.ts';
import { quote } from './quote.ts';
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

const LONGEST = { roll: 40, name: 300 } as const;

/** The student in a row, and what is wrong with it, each with row and field. */
export function readStudent(
  { row, cells }: CsvRow, columns: Columns, width: number, known: KnownWires,
): { student: Student; mistakes: Mistake[] } {
  const cell = (column: number | undefined) => (column === undefined ? '' : (cells[column] ?? ''));
  const [roll, name, asked] = [cell(columns.roll), cell(columns.name), cell(columns.wire)];
  const wire = asked === '' ? { problems: [] } : parseWireAsk(asked, known);
  const mistakes = [
    ...cells.slice(width).some((extra) => extra !== '') ? [{ row, what: tooWide(cells.length, width) }] : [],
    ...textProblems(roll, 'roll').map((what) => ({ row, field: 'roll', what })),
    ...textProblems(name, 'name').map((what) => ({ row, field: 'name', what })),
    ...('problems' in wire ? wire.problems : []).map((what) => ({ row, field: 'wire', what })),
  ];
  return { student: { roll, name, ...('ask' in wire && { wire: wire.ask }), row }, mistakes };
}

function tooWide(cells: number, width: number): string {
  return `${cells} cells where the header has ${width}; put quotation marks round a cell that holds a comma`;
}

function textProblems(value: string, field: 'roll' | 'name'): string[] {
  if (!/[^\p{Cc}\p{Cf}\p{Z}]/u.test(value)) return [`the ${field} is blank; fill it in, or delete the row`];
  if (/[\r\n]/.test(value)) {
    return [`${quote(value)} runs over two lines; write it on one, and look for a quotation mark that is not closed`];
  }
  if (/\p{Cc}/u.test(value)) return [`${quote(value)} holds a character that cannot be printed; type it again`];
  if (value.includes('\ufffd')) return [`${quote(value)} has lost a letter on the way (\ufffd); type it again`];
  if ([...value].length > LONGEST[field]) return [`${quote(value)} is longer than ${LONGEST[field]} letters; shorten it`];
  return [];
}
