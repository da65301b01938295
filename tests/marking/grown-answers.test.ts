import { describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { type AnswersLayout, blankAnswers, readAnswers } from '../../generators/marking/answers-file.ts';
import { grownAnswers } from '../../generators/marking/grown-answers.ts';
import { classOf } from './classes.ts';

const made = classOf(4, '', 'grown');
const [first, further] = [made.issues.slice(0, 2), made.issues.slice(2)];
const layout: AnswersLayout = { columns: made.columns, symbols: loadWords('en', 'resistivity').spoken.symbols, heads: loadMarkingWords('en').heads, decimal: 'point' };
const bytes = (text: string) => new TextEncoder().encode(text);
const rowsIn = (text: string, decimal: AnswersLayout['decimal'] = 'point') => readAnswers(bytes(text), 'answers.csv', made.issues, { ...layout, decimal, words: loadMarkingWords('en') }).rows.map(({ issue, texts }) => [issue.code, ...texts]);
const empty = made.columns.map(() => '');

describe('an answers file to which sheets are added', () => {
  test('is the blank one of all sheets where nothing was typed', () => {
    expect(grownAnswers(bytes(blankAnswers(first, layout)), further, layout)).toBe(blankAnswers(made.issues, layout));
  });

  test.each([
    ['commas', ',', 'point', '\r\n'],
    ['semicolons and decimal commas', ';', 'comma', '\n'],
    ['tabs', '\t', 'point', '\r\n'],
  ] as const)('keeps what was typed letter by letter, with %s, columns in another order and one of the teacher\'s own', (_, delimiter, decimal, end) => {
    const value = decimal === 'comma' ? '2,63 Ω' : '2.63 Ω';
    const heads = blankAnswers([], { ...layout, decimal: 'comma' }).slice(1).trim().split(';');
    const cells = [
      ['remark', ...heads.toReversed()],
      ['late', ...empty.map(() => 'x').with(0, value), first[0]!.code, first[0]!.name, first[0]!.roll],
    ];
    const typed = cells.map((row) => row.map((cell) => (cell.includes(delimiter) ? `"${cell}"` : cell)).join(delimiter)).join(end);
    const grown = grownAnswers(bytes(typed), further, layout)!;
    expect(grown.startsWith(`\ufeff${typed}`)).toBe(true);
    expect(rowsIn(grown, decimal)).toEqual([[first[0]!.code, ...empty.map(() => 'x').with(-1, value)], ...further.map(({ code }) => [code, ...empty])]);
  });

  test.each([
    ['an answer is missing', blankAnswers(first, { ...layout, columns: made.columns.slice(1) })],
    ['it is empty', ''],
    ['it is no text', 'PK\u0003\u0004'],
    ['a quotation mark is never closed', `${blankAnswers(first, layout)}"`],
  ])('is left alone where %s', (_, text) => {
    expect(grownAnswers(bytes(text), further, layout)).toBeUndefined();
  });
});
