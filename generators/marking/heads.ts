import type { Rows } from '../experiments/layout.ts';
import { fill } from '../quantities/spoken.ts';
import { rowLabel } from '../sheets/record.ts';
import type { Column } from './columns.ts';

/** Words for the heads of the answers file. */
export interface HeadWords {
  /** Of the first columns; the name is for the teacher's eye. */
  roll: string;
  name: string;
  code: string;
  /** A name with its sitting, where a student has more than one sheet; blanks {name} and {sitting}. */
  sitting: string;
  /** Of an answer in a table; blanks {symbol} and {row}. */
  inRow: string;
}

/** What a deciding answer is called: 'mean X', 'X, row 1', 'X, row B'. */
export function headOf({ id, row, inTable, rows }: Pick<Column, 'id' | 'row' | 'inTable' | 'rows'>, symbols: Record<string, string>, words: HeadWords): string {
  const symbol = symbols[id] ?? id;
  return inTable ? fill(words.inRow, { symbol, row: rowName(row, rows) }) : symbol;
}

/** What a row of a table is called in writing, as the table has it: 1, 'B', '2 a'. */
export function rowName(row: number, rows: Rows = 'numbered'): number | string {
  const { number, direction } = rowLabel(rows, row);
  return direction === undefined ? number : `${number} ${direction}`;
}

/** Heads that differ by case, spaces or the width of their letters are the same. */
export const plainHead = (head: string) => head.normalize('NFKC').toLowerCase().replace(/[._\s]+/g, ' ').trim();
