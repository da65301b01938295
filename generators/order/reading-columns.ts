import { UserMistake } from '../mistake.ts';
import { csvRows } from './csv.ts';
import { decodeText } from './text.ts';

/** One column of a table of readings as it was typed: its head, and what stands below, blank cells left out. */
export interface ReadingColumn {
  head: string;
  cells: { text: string; row: number }[];
}

/**
 * The columns of a CSV file of readings; a single value stands below its head by itself.
 * Throws a UserMistake where the file is no table with heads.
 */
export function readingColumns(bytes: Uint8Array, file: string, isColumn: (head: string) => boolean): { columns: ReadingColumn[]; notices: string[] } {
  const { text, notices } = decodeText(bytes, file);
  const [heads, ...rows] = csvRows(text, file, isColumn);
  if (!heads || rows.length === 0) throw new UserMistake([{ file, what: 'holds no readings; write the names of the columns in the first row and the readings below' }]);
  const columns = heads.cells.map((head, place) => ({
    head,
    cells: rows.flatMap(({ row, cells }) => (cells[place] ? [{ text: cells[place], row }] : [])),
  }));
  return { columns: columns.filter(({ head, cells }) => head !== '' || cells.length > 0), notices };
}
