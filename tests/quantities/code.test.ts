import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { numberCode } from '../../generators/quantities/code.ts';
import { readExpression } from '../../generators/quantities/expression.ts';
import { formula } from '../../generators/quantities/formula.ts';
import { powerOf } from '../../generators/quantities/interval.ts';
import { print } from '../../generators/quantities/print.ts';
import { anyExpression, anyScope, fullyBracketed, names, repeatable } from './expressions.ts';
import { expectWithin } from './numerical.ts';

const known = new Set(names);

/** mathjs goes over to complex numbers where a root is of a negative; plain JavaScript says NaN. */
const byMathjs = (text: string, scope: Record<string, number>) => {
  const value = evaluate(text, { ...scope }) as unknown;
  return typeof value === 'number' ? value : NaN;
};

function expectSame(plain: number, mathjs: number): void {
  if (Number.isFinite(mathjs) && mathjs !== 0) expectWithin(plain, mathjs, 1e-9);
}

/** `power` is what the code calls for a power, so a quantity of that name needs another. */
const inCode = (id: string) => `$${id}`;
const dialect = { ...numberCode, name: (id: string) => numberCode.name(inCode(id)) };

describe('a formula as plain JavaScript', () => {
  test('gives what mathjs gives for the tree, whatever its form', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyExpression, anyScope, (expression, scope) => {
        const plain = new Function('power', ...names.map(inCode), `return ${print(expression, dialect)}`);
        const value = plain(powerOf, ...names.map((name) => scope[name])) as number;
        const expected = byMathjs(fullyBracketed(expression), scope);
        if (Number.isFinite(expected)) compared++;
        expectSame(value, expected);
      }),
      repeatable(3000),
    );
    expect(compared).toBeGreaterThan(1500);
  });

  test('survives being read again', () => {
    fc.assert(
      fc.property(anyExpression, (expression) => {
        expect(readExpression(fullyBracketed(expression), known)).toEqual(expression);
      }),
      repeatable(1000),
    );
  });

  test.each([
    ['x - (-I)', 'x-(-I)'],
    ['x - (-I * L)', 'x-(-I*L)'],
    ['x - (-I / L)', 'x-(-I/L)'],
    ['-(-x)', '-(-x)'],
    ['x / (I / L)', 'x/(I/L)'],
    ['x / I / L', 'x/I/L'],
    ['x - (I - L)', 'x-(I-L)'],
    ['x - I - L', 'x-I-L'],
    ['-x^2', '-power(x,2)'],
    ['(-x)^2', 'power((-x),2)'],
    ['(x + I) * L', '(x+I)*L'],
    ['sqrt(x + I)', 'Math.sqrt(x+I)'],
  ])('%s is %s', (text, code) => {
    expect(print(readExpression(text, known), numberCode)).toBe(code);
  });
});

describe('a formula that has been compiled', () => {
  test('gives what mathjs gives for its text, whatever its names are', () => {
    fc.assert(
      fc.property(anyExpression, anyScope, (expression, scope) => {
        const text = fullyBracketed(expression);
        const made = formula(text, known);
        expectSame(made.value(made.names.map((name) => scope[name]!)), byMathjs(text, scope));
      }),
      repeatable(1000),
    );
  });
});
