import { CsvError, parse } from 'csv-parse/sync';
import { UserMistake } from '../mistake.ts';

/** One row of a spreadsheet; `row` counts from 1, blank rows included, as the spreadsheet shows it. */
export interface CsvRow {
  row: number;
  cells: string[];
}

const DELIMITERS = [',', ';', '\t'] as const;
type Delimiter = (typeof DELIMITERS)[number];

/**
 * The rows of a CSV text that are not blank, the header first. The delimiter is the one of comma, semicolon and tab
 * that cuts the header into most of the columns that `isColumn` knows, else into most cells.
 * Throws a UserMistake when a quoted cell is not closed.
 */
export function csvRows(text: string, file: string, isColumn: (header: string) => boolean): CsvRow[] {
  const { body, first } = withoutSepLine(text);
  const delimiter = detect(body, isColumn);
  const all = records(body, delimiter, file, first);
  return all
    .map((cells, i) => ({ row: first + i, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}

/** Some spreadsheets write 'sep=;' above the header. */
function withoutSepLine(text: string): { body: string; first: number } {
  const sep = /^"?sep=[,;\t]"?\r?\n/i.exec(text);
  return sep ? { body: text.slice(sep[0].length), first: 2 } : { body: text, first: 1 };
}

function detect(text: string, isColumn: (header: string) => boolean): Delimiter {
  const header = text.split(/\r\n|\r|\n/).find((line) => /[^\s,;]/.test(line)) ?? '';
  const score = (delimiter: Delimiter) => {
    const cells = header.split(delimiter).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
    return cells.filter(isColumn).length * 1000 + cells.length;
  };
  return [...DELIMITERS].sort((a, b) => score(b) - score(a))[0]!;
}

function records(text: string, delimiter: Delimiter, file: string, first: number): string[][] {
  try {
    return parse(text, {
      delimiter,
      relax_column_count: true,
      // A quote inside an unquoted cell is a letter like any other: 12" rule.
      relax_quotes: true,
      skip_empty_lines: false,
      record_delimiter: ['\r\n', '\n', '\r'],
    });
  } catch (cause) {
    if (!(cause instanceof CsvError && cause.code === 'CSV_QUOTE_NOT_CLOSED')) throw cause;
    const row = first + Number(cause['records'] ?? 0);
    const what = 'a quotation mark is opened here and never closed; close it or take it out';
    throw new UserMistake([{ file, row, what }], { cause });
  }
}
