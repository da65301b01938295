import type { Decimal } from './entry.ts';

/** Where a comma is the decimal sign, spreadsheets part cells by semicolons. */
const delimiterOf = (decimal: Decimal) => (decimal === 'comma' ? ';' : ',');

/** Begins what a spreadsheet might work out; a plain number is none, nor is a dash alone. */
const LIVE = /^[=+\-@\t\r]/;
const HARMLESS = /^-?(?:\d+(?:[.,]\d+)?)?$/;

/**
 * Rows as a spreadsheet opens them: UTF-8 with its mark, cells quoted where they have to be, nothing that could be
 * taken for a formula: such a cell begins with an apostrophe, which spreadsheets take for "this is text".
 */
export function csvText(rows: readonly (readonly string[])[], decimal: Decimal): string {
  return `\ufeff${rows.map((cells) => csvLine(cells, delimiterOf(decimal))).join('')}`;
}

/** One row of these, its end included. */
export function csvLine(cells: readonly string[], delimiter: string): string {
  return `${cells.map((cell) => quoted(dead(cell), delimiter)).join(delimiter)}\r\n`;
}

function dead(cell: string): string {
  return LIVE.test(cell) && !HARMLESS.test(cell) ? `'${cell}` : cell;
}

/** A cell as it was before `csvText`. */
export function alive(cell: string): string {
  return cell.startsWith("'") && LIVE.test(cell.slice(1)) ? cell.slice(1) : cell;
}

function quoted(cell: string, delimiter: string): string {
  return cell.includes(delimiter) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A number of marks or the like with the decimal sign asked for. */
export function numberCell(value: number, decimal: Decimal): string {
  return decimal === 'comma' ? String(value).replace('.', ',') : String(value);
}
