import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { readExpression } from '../../generators/quantities/expression.ts';
import { print } from '../../generators/quantities/print.ts';
import { texNumber, texSubstituted, texSymbols } from '../../generators/quantities/tex.ts';
import { anyExpression, fullyBracketed, names, repeatable } from './expressions.ts';
import { expectWithin } from './numerical.ts';
import { readTex } from './tex-reader.ts';

const known = new Set(names);
const symbols = (text: string) => print(readExpression(text, known), texSymbols((id) => id));
const put = (text: string, values: Record<string, string>) => print(readExpression(text, known), texSubstituted((id) => values[id]!));

const written = fc.constantFrom('43.2', '0.60', '-0.03', '3.76e-4', '-1.20e-3', '100', '2.0');

describe('a formula with numbers put in', () => {
  test('reads as what is meant, whatever its form and its numbers', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyExpression, fc.array(written, { minLength: names.length, maxLength: names.length }), (expression, values) => {
        const value = (id: string) => values[names.indexOf(id)]!;
        const read = readTex(print(expression, texSubstituted(value)));
        const meant = evaluate(fullyBracketed(expression), Object.fromEntries(names.map((id) => [id, Number(value(id))]))) as unknown;
        if (typeof meant !== 'number' || !Number.isFinite(meant) || meant === 0) return;
        compared++;
        expectWithin(read, meant, 1e-9);
      }),
      repeatable(3000),
    );
    expect(compared).toBeGreaterThan(1500);
  });

  test('keeps every digit as it is written', () => {
    fc.assert(
      fc.property(anyExpression, (expression) => {
        const used = names.filter((id) => fullyBracketed(expression).match(new RegExp(`\\b${id}\\b`)));
        const tex = print(expression, texSubstituted((id) => `${names.indexOf(id) + 3}.60`));
        for (const id of used) expect(tex).toContain(`${names.indexOf(id) + 3}.60`);
      }),
      repeatable(300),
    );
  });

  test.each([
    ['x - e', { x: '0.383', e: '-0.03' }, '0.383 - \\left({-0.03}\\right)'],
    ['x + e', { x: '0.383', e: '-0.03' }, '0.383 + \\left({-0.03}\\right)'],
    ['x * e', { x: '0.60', e: '-0.03' }, '0.60 \\times \\left({-0.03}\\right)'],
    ['e * x', { x: '0.60', e: '-0.03' }, '-0.03 \\times 0.60'],
    ['I - e * x', { x: '0.60', e: '-0.03', I: '2' }, '2 - \\left({-0.03 \\times 0.60}\\right)'],
    ['x^2', { x: '3.76e-4' }, '\\left(3.76 \\times 10^{-4}\\right)^{2}'],
    ['x^2', { x: '-0.03' }, '\\left({-0.03}\\right)^{2}'],
    ['x^2', { x: '0.60' }, '0.60^{2}'],
    ['x / I', { x: '-0.03', I: '3.76e-4' }, '\\frac{-0.03}{3.76 \\times 10^{-4}}'],
    ['-x', { x: '-0.03' }, '-\\left({-0.03}\\right)'],
    ['x * (100 - I) / I', { x: '2.0', I: '43.2' }, '\\frac{2.0 \\times \\left(100 - 43.2\\right)}{43.2}'],
    ['sqrt(x - e)', { x: '1.0', e: '-0.03' }, '\\sqrt{1.0 - \\left({-0.03}\\right)}'],
  ])('%s with %j', (text, values, tex) => {
    expect(put(text, values as Record<string, string>)).toBe(tex);
  });
});

describe('a formula in symbols', () => {
  test.each([
    ['x * L', 'x\\,L'],
    ['x * 4', 'x \\times 4'],
    ['4 * x', '4\\,x'],
    ['x * (-L)', 'x\\,\\left({-L}\\right)'],
    ['x / (I / L)', '\\frac{x}{\\frac{I}{L}}'],
    ['(x / I)^2', '\\left(\\frac{x}{I}\\right)^{2}'],
    ['-(x - I) * L', '-\\left(x - I\\right)\\,L'],
    ['x - (I - L)', 'x - \\left(I - L\\right)'],
    ['pi * x^2 / 4', '\\frac{\\pi\\,x^{2}}{4}'],
  ])('%s', (text, tex) => {
    expect(symbols(text)).toBe(tex);
  });
});

test.each([
  ['0.60', '0.60'],
  ['-0.03', '-0.03'],
  ['4.97e-7', '4.97 \\times 10^{-7}'],
])('the number %s is %s', (number, tex) => {
  expect(texNumber(number).text).toBe(tex);
});
