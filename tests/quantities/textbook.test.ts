import { describe, expect, test } from 'vitest';
import { numberCode } from '../../generators/quantities/code.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { readExpression } from '../../generators/quantities/expression.ts';
import { formula } from '../../generators/quantities/formula.ts';
import { print } from '../../generators/quantities/print.ts';
import { expand, relativeTerms } from '../../generators/quantities/textbook.ts';
import { sensitivities, worstCase } from '../../generators/quantities/uncertainty.ts';
import { streams } from '../../generators/random.ts';
import { expectWithin } from './numerical.ts';
import { programOf, randomReadings, variantName, variants } from './practical.ts';

const names = new Set(['R', 'W', 'l', 'r', 'd', 'L', 'X']);
const exact = new Set(['W']);
const read = (text: string) => readExpression(text, names);
const balance = expand(read('R * r / l'), (id) => (id === 'r' ? read('W - l') : undefined));

/** The terms in words: '2 d/d'. */
const terms = (text: string) =>
  relativeTerms(read(text), exact)?.map(({ times, off, over }) => `${times} ${off.join(' ')}/${print(over, numberCode)}`);

describe('the textbook form', () => {
  test('of X is ΔR/R + Δl/(100 − l) + Δl/l', () => {
    const found = relativeTerms(balance, exact)!.map(({ times, off, over }) => `${times} ${off.join(' ')}/${print(over, numberCode)}`);
    expect(found).toEqual(['1 R/R', '1 l/W-l', '1 l/l']);
  });
  test('of the resistivity doubles Δd/d', () => {
    expect(terms('pi * d^2 * X / (4 * L)')).toEqual(['2 d/d', '1 X/X', '1 L/L']);
  });
  test.each([
    ['sqrt(X / L)', ['0.5 X/X', '0.5 L/L']],
    ['(X + L)^2', ['2 X L/X+L']],
    ['-X * 4', ['1 X/X']],
    ['W * 4', []],
    ['W - 4', []],
  ])('of %s is %j', (text, expected) => {
    expect(terms(text)).toEqual(expected);
  });
  test.each(['X + R * L', '(X + R * L)^2', 'X - (L + X)', 'X + X'])('of %s is none: the rule does not apply', (text) => {
    expect(terms(text)).toBeUndefined();
  });
});

describe('is the true linear sum', () => {
  const delta: Record<string, number> = { R: 0.01, l: 0.1, d: 0.005, L: 0.1, X: 0.02 };
  const relative = (expression: ReturnType<typeof read>, at: Record<string, number>) =>
    relativeTerms(expression, exact)!.reduce((sum, { times, off, over }) => {
      const made = formula(print(over, numberCode), names);
      return sum + (times * off.reduce((all, id) => all + delta[id]!, 0)) / made.value(made.names.map((id) => at[id]!));
    }, 0);

  test('for X, with the rest of the wire traced back to l', () => {
    const made = formula('R * (W - l) / l', names);
    const random = streams('textbook').of('X');
    for (let i = 0; i < 100; i++) {
      const at: Record<string, number> = { R: random.between(1, 10), l: random.between(20, 80), W: 100 };
      const args = made.names.map((id) => at[id]!);
      const linear = made.gradient(args).reduce((sum, by, n) => sum + Math.abs(by) * (delta[made.names[n]!] ?? 0), 0);
      expectWithin(relative(balance, at), linear / made.value(args), 1e-12);
    }
  });

  test.each(variants.map((variant) => ({ name: variantName(variant), variant })))('in the practical, $name', ({ name, variant }) => {
    const checked = programOf(variant);
    const values = evaluate(checked, randomReadings(streams('textbook').of(name), variant), 'even');
    const { of } = sensitivities(checked, values);
    const limits = { R: { absolute: delta['R']! }, l: { absolute: delta['l']! } };
    values.exact.get('X')!.forEach((X, row) => {
      const at = Object.fromEntries(['R', 'l'].map((id) => [id, values.exact.get(id)![row]!]));
      expectWithin(worstCase(of('X', row), values, limits) / X, relative(balance, { ...at, W: 100 }), 1e-12);
    });
  });
});

test('expand puts one formula inside another and leaves the rest', () => {
  expect(print(expand(read('sqrt(r)^2 - pi * -r + R'), (id) => (id === 'r' ? read('W - l') : undefined)), numberCode)).toBe('power(Math.sqrt(W-l),2)-Math.PI*(-(W-l))+R');
});
