import type { Mistake } from '../mistake.ts';
import type { CsvRow } from './csv.ts';
import { nearMiss } from '../near-miss.ts';
import { quote } from './quote.ts';

/** Which cell of a row holds what. */
export interface Columns {
  roll: number;
  name: number;
  wire?: number;
}
type Role = keyof Columns;

/** Header names, written small, without dots and with single spaces; common practice, no source. */
const SYNONYMS: Record<Role, readonly string[]> = {
  roll: ['roll', 'roll no', 'roll number', 'rollno', 'no', 'number', 'sr no', 'serial no', 'index no'],
  name: ['name', 'student', 'student name', 'name of student', 'full name', 'pupil'],
  wire: ['wire', 'wires'],
};
const ROLES = Object.keys(SYNONYMS) as Role[];

const plain = (header: string) => header.normalize('NFKC').toLowerCase().replace(/[._\s]+/g, ' ').trim();

/** The column that a header cell stands for, if any. */
export function columnOf(header: string): Role | undefined {
  return ROLES.find((role) => SYNONYMS[role].includes(plain(header)));
}

/** The column that a mistyped header cell was probably meant for. */
function nearColumn(header: string): Role | undefined {
  const word = plain(header);
  return ROLES.find((role) => word.length > 2 && nearMiss(word, SYNONYMS[role]) !== undefined);
}

/** Where the columns stand in the header row; or what keeps them from being found, each with row and field. */
export function findColumns({ row, cells }: CsvRow): { columns: Columns; notices: string[] } | { mistakes: Mistake[] } {
  const roles = cells.map(columnOf);
  const near = cells.map((cell, i) => (roles[i] === undefined ? nearColumn(cell) : undefined));
  if ([...roles, ...near].every((role) => role === undefined)) {
    const what = `no header found: the first row must name the columns, roll and name; it reads ${quote(cells.join(', '))}`;
    return { mistakes: [{ row, what }] };
  }
  const mistakes = ROLES.flatMap((role) => {
    const what = columnProblem(role, cells, roles, near);
    return what === undefined ? [] : [{ row, field: role, what }];
  });
  if (mistakes.length > 0) return { mistakes };
  const wire = roles.indexOf('wire');
  return {
    columns: { roll: roles.indexOf('roll'), name: roles.indexOf('name'), ...(wire >= 0 && { wire }) },
    notices: wire >= 0 ? [] : cells.filter((_, i) => near[i] === 'wire').map(leftOut),
  };
}

function leftOut(cell: string): string {
  return `column ${quote(cell)} was left out; if it holds the wires, call it wire`;
}

function columnProblem(role: Role, cells: string[], roles: (Role | undefined)[], near: (Role | undefined)[]): string | undefined {
  const found = cells.filter((_, i) => roles[i] === role);
  if (found.length > 1) return `${found.length} columns could be the ${role}: ${found.map(quote).join(', ')}; keep one of them`;
  if (found.length === 1 || role === 'wire') return undefined;
  const meant = cells.find((_, i) => near[i] === role);
  return meant === undefined
    ? `no column ${role}; the header has ${cells.filter(Boolean).map(quote).join(', ')}; add a column ${role}`
    : `no column ${role}; did you mean ${quote(meant)}? Call it ${role}`;
}
