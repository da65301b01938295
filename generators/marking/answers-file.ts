import { type Mistake, UserMistake } from '../mistake.ts';
import { nearMiss } from '../near-miss.ts';
import { allMistakes } from '../order/all-mistakes.ts';
import { type CsvRow, csvRows } from '../order/csv.ts';
import { quote } from '../order/quote.ts';
import { decodeText } from '../order/text.ts';
import type { Issue } from '../sheets/issue.ts';
import type { Column } from './columns.ts';
import { alive, csvText } from './csv-text.ts';
import { type Decimal, type Entry, readEntry } from './entry.ts';
import { type HeadWords, headOf, plainHead } from './heads.ts';
import { matchRows } from './match-rows.ts';
import { type MarkingWords, whyUnreadable } from './words.ts';

/** How an answers file is laid out. */
export interface AnswersLayout {
  columns: readonly Column[];
  symbols: Record<string, string>;
  heads: HeadWords;
  decimal: Decimal;
}

/** The same with what is said of an answer that cannot be read. */
interface Reading extends AnswersLayout {
  words: Pick<MarkingWords, 'unreadable'>;
}

/** One student's row of the answers file. */
export interface AnswerRow {
  /** As the spreadsheet counts it. */
  row: number;
  issue: Issue;
  entries: Entry[];
  /** What was typed, cell by cell. */
  texts: string[];
}

/** The answers file ready to be typed into: who, and room for each deciding answer. */
export function blankAnswers(issues: readonly Pick<Issue, 'roll' | 'name' | 'code'>[], { columns, symbols, heads, decimal }: AnswersLayout): string {
  const head = [heads.roll, heads.name, heads.code, ...columns.map((column) => headOf(column, symbols, heads))];
  return csvText([head, ...issues.map(({ roll, name, code }) => [roll, name, code, ...columns.map(() => '')])], decimal);
}

/**
 * Reads a filled answers file. Columns may stand in any order and others among them.
 * @throws UserMistake that lists every cell that cannot be read and every row that is nobody's, with row and column
 */
export function readAnswers(bytes: Uint8Array, file: string, issues: readonly Issue[], layout: Reading): { rows: AnswerRow[]; notices: string[] } {
  const { text, notices } = decodeText(bytes, file);
  const { columns, symbols, heads } = layout;
  const names = [heads.roll, heads.code, ...columns.map((column) => headOf(column, symbols, heads))];
  const all = names.map(plainHead);
  const [head, ...below] = csvRows(text, file, (cell) => all.includes(plainHead(cell)));
  if (!head) throw new UserMistake([{ file, what: 'the file is empty; fill in the answers.csv of the pack' }]);
  const found = findHeads(head, names, heads);
  if ('mistakes' in found) throw allMistakes(found.mistakes.map((mistake) => ({ file, ...mistake })));
  const [roll, code, ...answers] = found.places as [number, number, ...number[]];
  const matched = matchRows(below.map(({ row, cells }) => ({ row, roll: alive(cells[roll] ?? ''), code: cells[code] ?? '' })), issues);
  const typed = below.map(({ row, cells }) => readCells(row, answers.map((place) => cells[place] ?? ''), names.slice(2), layout));
  const mistakes = [...matched.mistakes, ...typed.flatMap((each) => each.mistakes)];
  if (mistakes.length > 0) throw allMistakes(mistakes.map((mistake) => ({ file, ...mistake })));
  const rows = below.map(({ row }, i): AnswerRow => ({ row, issue: matched.issues[i]!, entries: typed[i]!.entries, texts: typed[i]!.texts }));
  return { rows, notices: [...notices, ...found.notices, ...matched.notices] };
}

function readCells(row: number, texts: string[], names: readonly string[], { decimal, words }: Reading): { entries: Entry[]; texts: string[]; mistakes: Mistake[] } {
  const entries = texts.map((text) => readEntry(alive(text), decimal));
  const mistakes = entries.flatMap((entry, i): Mistake[] =>
    entry.is === 'unreadable' ? [{ row, field: names[i]!, what: `${quote(texts[i])} ${whyUnreadable(entry, words)}; type it as the student wrote it, - for left blank, x for struck out` }] : [],
  );
  return { entries, texts, mistakes };
}

/** Where the columns stand that are needed. */
function findHeads({ row, cells }: CsvRow, names: readonly string[], heads: HeadWords): { places: number[]; notices: string[] } | { mistakes: Mistake[] } {
  const plain = cells.map(plainHead);
  const mistakes = names.flatMap((name): Mistake[] => {
    const places = plain.filter((cell) => cell === plainHead(name)).length;
    if (places === 1) return [];
    if (places > 1) return [{ row, what: `${places} columns are called ${quote(name)}; keep one of them` }];
    const near = nearMiss(plainHead(name), plain.filter((cell) => cell !== ''));
    return [{ row, what: `no column ${quote(name)}${near === undefined ? `; the file has ${cells.filter(Boolean).map(quote).join(', ')}. Use the answers.csv that belongs to this mark scheme` : `; did you mean ${quote(near)}? Call it ${name}`}` }];
  });
  if (mistakes.length > 0) return { mistakes };
  const known = [...names, heads.name].map(plainHead);
  const others = cells.filter((cell, i) => cell !== '' && !known.includes(plain[i]!));
  return { places: names.map((name) => plain.indexOf(plainHead(name))), notices: others.map((cell) => `column ${quote(cell)} is no deciding answer and was left out`) };
}
