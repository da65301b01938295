import fc from 'fast-check';
import { derivative } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { numberCode } from '../../generators/quantities/code.ts';
import { partial } from '../../generators/quantities/derivative.ts';
import { readExpression } from '../../generators/quantities/expression.ts';
import { formula } from '../../generators/quantities/formula.ts';
import { print } from '../../generators/quantities/print.ts';
import { streams } from '../../generators/random.ts';
import { anyExpression, anyScope, fullyBracketed, names, repeatable } from './expressions.ts';
import { programOf, stepsOf, variantName, variants } from './practical.ts';
import { expectWithin, numericalPartial } from './numerical.ts';

const known = new Set(names);

describe('the gradient of every formula of the practical is the numerical one', () => {
  test.each(variants.map((variant) => ({ name: variantName(variant), variant })))('$name', ({ name, variant }) => {
    const random = streams('gradients').of(name);
    const relations = stepsOf(variant).filter((step) => step.kind === 'relation');
    for (const { id } of relations) {
      const { as, model, routes, slips } = programOf(variant).compiled(id);
      const formulas = [as, model, ...routes.flatMap(({ via, as: last }) => [...via.map((line) => line.as), last]), ...slips.map((slip) => slip.as)];
      for (const { gradient, names, value } of formulas) {
        const args = names.map(() => random.between(0.5, 3));
        const exact = gradient(args);
        names.forEach((_, i) => expectWithin(exact[i], numericalPartial(value, args, i), 1e-9));
      }
    }
  });
});

describe('any formula', () => {
  test('has the gradient that mathjs finds', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyExpression, anyScope, (expression, scope) => {
        const text = fullyBracketed(expression);
        const { gradient, names } = formula(text, known);
        const found = gradient(names.map((name) => scope[name]!));
        names.forEach((name, i) => {
          const expected = derivative(text, name, { simplify: false }).evaluate({ ...scope }) as unknown;
          if (typeof expected !== 'number' || !Number.isFinite(expected) || Math.abs(expected) < 1e-9) return;
          compared++;
          expectWithin(found[i], expected, 1e-6);
        });
      }),
      repeatable(1500),
    );
    expect(compared).toBeGreaterThan(500);
  });

  test.each([
    ['x - x', 'x', 0],
    ['x * x', 'x', 6],
    ['x / x', 'x', 0],
    ['sqrt(x^2)', 'x', 1],
    ['(2 * x)^3', 'x', 216],
    ['1 / x^2', 'x', -2 / 27],
    ['-x', 'x', -1],
    ['pi * x', 'x', Math.PI],
  ])('%s by %s at 3 is %d', (text, _, slope) => {
    expect(formula(text, known).gradient([3])[0]).toBeCloseTo(slope, 12);
  });
});

test('what is nought or once something is left out', () => {
  const by = (text: string) => print(partial(readExpression(text, known), 'x'), numberCode);
  expect(by('L')).toBe('0');
  expect(by('x + L')).toBe('1');
  expect(by('L - x')).toBe('-1');
  expect(by('L * x')).toBe('L');
  expect(by('L / x')).toBe('-(L/power(x,2))');
  expect(by('x^2')).toBe('2*x');
});
