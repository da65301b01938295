import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { readExpression } from '../../generators/quantities/expression.ts';
import { print } from '../../generators/quantities/print.ts';
import { fill, spoken, spokenNumber, spokenSubstituted } from '../../generators/quantities/spoken.ts';
import { anyExpression, fullyBracketed, names, repeatable } from './expressions.ts';
import { expectWithin } from './numerical.ts';
import { english, words } from './words.ts';

const known = new Set(names);
const put = (text: string, values: Record<string, string>) => print(readExpression(text, known), spokenSubstituted(words, (id) => values[id]!));

/** What the test's words say, as mathjs reads it: only brackets that are spoken count. */
function readSpoken(text: string): unknown {
  const fraction = (a: number, b: number) => a / b;
  const code = text
    .replaceAll(/ times ten to the (minus )?(\d+)/g, (_, minus: string | undefined, n: string) => ` * 10^(${minus ? '-' : ''}${n})`)
    .replaceAll(' squared', '^2')
    .replaceAll(' cubed', '^3')
    .replaceAll(' to the ', '^')
    .replaceAll('minus ', '-');
  expect(code).not.toMatch(/[-+*] -/);
  return evaluate(code, { frac: fraction });
}

describe('a formula read aloud', () => {
  test('says what is meant by its words alone, whatever its form and its numbers', () => {
    let compared = 0;
    const written = fc.constantFrom('43.2', '0.60', '-0.03', '3.76e-4', '-1.20e-3', '2.0');
    fc.assert(
      fc.property(anyExpression, fc.array(written, { minLength: names.length, maxLength: names.length }), (expression, values) => {
        const value = (id: string) => values[names.indexOf(id)]!;
        const read = readSpoken(print(expression, spokenSubstituted(words, value)));
        const meant = evaluate(fullyBracketed(expression), Object.fromEntries(names.map((id) => [id, Number(value(id))]))) as unknown;
        if (typeof meant !== 'number' || !Number.isFinite(meant) || meant === 0) return;
        compared++;
        expectWithin(read as number, meant, 1e-9);
      }),
      repeatable(1500),
    );
    expect(compared).toBeGreaterThan(700);
  });

  test.each([
    ['x - e', { x: '0.60', e: '-0.03' }, '0.60 - (minus 0.03)'],
    ['x^2', { x: '3.76e-4' }, '(3.76 times ten to the minus 4) squared'],
    ['x^3', { x: '0.60' }, '0.60 cubed'],
    ['x^4', { x: '0.60' }, '0.60 to the 4'],
    ['x / (e + I)', { x: '1', e: '2', I: '3' }, 'frac(1, 2 + 3)'],
    ['(x / e)^2', { x: '1', e: '2' }, '(frac(1, 2)) squared'],
    ['1e-7 * x', { x: '0.60' }, '1 times ten to the minus 7 * 0.60'],
  ])('%s with %j', (text, values, heard) => {
    expect(put(text, values as Record<string, string>)).toBe(heard);
  });

  test('names symbols by their words', () => {
    expect(print(readExpression('x * I', known), spoken(words, (id) => `the ${id}`))).toBe('the x * the I');
  });
});

test.each([
  ['0.60', '0.60'],
  ['-0.03', 'minus 0.03'],
  ['-4.97e-7', 'minus 4.97 times ten to the minus 7'],
])('the number %s is read %s', (number, heard) => {
  expect(spokenNumber(number, words)).toBe(heard);
});

describe('blanks', () => {
  test('are filled by name', () => {
    expect(fill('{b} before {a}', { a: 1, b: 'two' })).toBe('two before 1');
  });
  test('without a word are a mistake', () => {
    expect(() => fill('{a} and {b}', { a: 1 })).toThrow('no word for the blank {b}');
  });
});

test('the English words fill every blank of every form', () => {
  const all = 'sqrt(x^2 + x^3) / (-x^4) - pi * (x - 1e-7)';
  const heard = print(readExpression(all, known), spoken(english, (id) => id));
  expect(heard).not.toMatch(/[{}]/);
  expect(heard).toContain('open bracket');
});
