import { csvRows } from '../order/csv.ts';
import { decodeText } from '../order/text.ts';
import type { Issue } from '../sheets/issue.ts';
import type { AnswersLayout } from './answers-file.ts';
import { csvLine } from './csv-text.ts';
import { headOf, plainHead } from './heads.ts';

/**
 * An answers file with rows for further sheets at its end; what stands in it stays as it is. Undefined where a row
 * cannot be added: some column is missing, or the file is none.
 */
export function grownAnswers(bytes: Uint8Array, further: readonly Issue[], { columns, symbols, heads }: AnswersLayout): string | undefined {
  const names = [heads.roll, heads.name, heads.code, ...columns.map((column) => headOf(column, symbols, heads))].map(plainHead);
  try {
    const { text } = decodeText(bytes, '');
    const rowsOf = (of: string) => csvRows(of, '', (cell) => names.includes(plainHead(cell)));
    const [head] = rowsOf(text);
    const places = names.map((name) => head?.cells.map(plainHead).indexOf(name) ?? -1);
    if (!head || places.includes(-1)) return undefined;
    const grown = DELIMITERS.map((delimiter) => withRows(text, further, { places, width: head.cells.length, delimiter }));
    // Only with the delimiter of the file does each new code stand in its column.
    return grown.find((one) => further.every(({ code }, i) => rowsOf(one).at(i - further.length)?.cells[places[2]!] === code));
  } catch {
    return undefined;
  }
}

const DELIMITERS = [',', ';', '\t'];

function withRows(text: string, further: readonly Issue[], { places, width, delimiter }: { places: readonly number[]; width: number; delimiter: string }): string {
  const lines = further.map(({ roll, name, code }) => {
    const cells = Array.from({ length: width }, () => '');
    [roll, name, code].forEach((cell, i) => (cells[places[i]!] = cell));
    return csvLine(cells, delimiter);
  });
  return `\ufeff${text}${/[\r\n]$/.test(text) ? '' : '\r\n'}${lines.join('')}`;
}
