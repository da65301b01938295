import { fill } from '../quantities/spoken.ts';
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

/** What a deciding answer is called: 'mean X', 'X, row 1'. */
export function headOf({ id, row, inTable }: Pick<Column, 'id' | 'row' | 'inTable'>, symbols: Record<string, string>, words: HeadWords): string {
  const symbol = symbols[id] ?? id;
  return inTable ? fill(words.inRow, { symbol, row: row + 1 }) : symbol;
}

/** Heads that differ by case, spaces or the width of their letters are the same. */
export const plainHead = (head: string) => head.normalize('NFKC').toLowerCase().replace(/[._\s]+/g, ' ').trim();
