import type { Mistake } from '../mistake.ts';
import type { CsvRow } from './csv.ts';
import { nearMiss } from './near-miss.ts';
import { quote } from './quote.ts';

/** Which cell of a row holds what. */
export interface Columns {
  roll: number;
  name: number;
  wire?: number;
}

/** Header names, written small, without dots and with single spaces. */
const SYNONYMS: Record<keyof Columns, readonly string[]> = {
  roll: ['roll', 'roll no', 'roll number', 'rollno', 'no', 'number', 'sr no', 'serial no', 'index no'],
  name: ['name', 'student', 'student name', 'name of student', 'full name', 'pupil'],
  wire: ['wire', 'wire asked'],
};
const ROLES = Object.keys(SYNONYMS) as (keyof Columns)[];

const plain = (header: string) => header.normalize('NFKC').toLowerCase().replace(/[._\s]+/g, ' ').trim();

/** The column that a header cell stands for, if any. */
export function columnOf(header: string): keyof Columns | undefined {
  return ROLES.find((role) => SYNONYMS[role].includes(plain(header)));
}

/** Where the columns stand in the header row; adds what is missing or doubled to `mistakes`. */
export function findColumns(header: CsvRow, file: string, mistakes: Mistake[]): Columns | undefined {
  const roles = header.cells.map(columnOf);
  if (roles.every((role) => role === undefined) && !header.cells.some((cell) => nearRole(cell))) {
    mistakes.push({ file, row: header.row, what: `no header found: the first row must name the columns, roll and name; it reads ${quote(header.cells.join(', '))}` });
    return undefined;
  }
  const before = mistakes.length;
  for (const role of ROLES) checkRole(role, roles, header, file, mistakes);
  if (mistakes.length > before) return undefined;
  const wire = roles.indexOf('wire');
  return { roll: roles.indexOf('roll'), name: roles.indexOf('name'), ...(wire >= 0 && { wire }) };
}

function checkRole(role: keyof Columns, roles: (keyof Columns | undefined)[], header: CsvRow, file: string, mistakes: Mistake[]): void {
  const found = header.cells.filter((_, i) => roles[i] === role);
  const place = { file, row: header.row, field: role };
  if (found.length > 1) {
    mistakes.push({ ...place, what: `${found.length} columns could be the ${role}: ${found.map(quote).join(', ')}; keep one of them` });
  }
  if (found.length > 0) return;
  const near = header.cells.find((cell, i) => roles[i] === undefined && nearRole(cell) === role);
  if (near !== undefined) mistakes.push({ ...place, what: `no column ${role}; did you mean ${quote(near)}? Call it ${role}` });
  else if (role !== 'wire') mistakes.push({ ...place, what: `no column ${role}; the header has ${header.cells.filter(Boolean).map(quote).join(', ')}; add a column ${role}` });
}

/** The column that a mistyped header cell was probably meant for. */
function nearRole(header: string): keyof Columns | undefined {
  const word = plain(header);
  return ROLES.find((role) => word.length > 2 && nearMiss(word, SYNONYMS[role]) !== undefined);
}
