import { fill } from '../quantities/spoken.ts';
import type { Column } from './columns.ts';
import { csvText, numberCell } from './csv-text.ts';
import type { Decimal } from './entry.ts';
import { sum } from './feedback.ts';
import { headOf } from './heads.ts';
import type { StudentMarks } from './mark-class.ts';
import type { MarkingWords } from './words.ts';

/** The marks of a class as a spreadsheet opens them; no cell is ever worked out as a formula. */
export function marksCsv(students: readonly StudentMarks[], columns: readonly Column[], symbols: Record<string, string>, words: MarkingWords, decimal: Decimal): string {
  const { heads, marksCsv: said, class: noted } = words;
  const names = columns.map((column) => headOf(column, symbols, heads));
  const head = [heads.roll, heads.name, heads.code, said.total, said.full, ...names.map((answer) => fill(said.marks, { answer })), ...names, said.note];
  const rows = students.map(({ issue, answers, texts, total, full, absent, incomplete }) => [
    issue.roll,
    issue.name,
    issue.code,
    absent ? '' : numberCell(total, decimal),
    numberCell(full, decimal),
    ...answers.map(({ earned, entry }) => (entry.is === 'not entered' ? '' : numberCell(sum(earned), decimal))),
    ...texts,
    absent ? noted.absent : incomplete ? noted.incomplete : '',
  ]);
  return csvText([head, ...rows], decimal);
}
