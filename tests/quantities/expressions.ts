import fc from 'fast-check';
import type { Expression } from '../../generators/quantities/expression.ts';

/** The names that random expressions use; `e`, `i`, `I`, `L` and `power` mean something else to mathjs or to the code made from a formula. */
export const names = ['x', 'e', 'i', 'I', 'L', 'power'];

/** Random trees of all the forms that a formula may take. */
export const anyExpression: fc.Arbitrary<Expression> = fc.letrec<{ tree: Expression }>((tie) => {
  const of = tie('tree');
  const pair = { left: of, right: of };
  return {
    tree: fc.oneof(
      { maxDepth: 5, depthSize: 'medium', withCrossShrink: true },
      fc.constantFrom(...names).map((id): Expression => ({ is: 'name', id })),
      fc.constantFrom('2', '4', '100', '0.5', '1e-7').map((text): Expression => ({ is: 'number', text })),
      fc.constant<Expression>({ is: 'pi' }),
      fc.record({ is: fc.constant('negative' as const), of }),
      fc.record({ is: fc.constant('sqrt' as const), of }),
      fc.record({ is: fc.constantFrom('sum' as const, 'difference' as const, 'product' as const, 'quotient' as const), ...pair }),
      fc.record({ is: fc.constant('power' as const), base: of, exponent: fc.integer({ min: 2, max: 4 }) }),
    ),
  };
}).tree;

/** The same formula with a bracket round every part: how it is meant, whatever a printer thinks of brackets. */
export function fullyBracketed(expression: Expression): string {
  switch (expression.is) {
    case 'number':
      return expression.text;
    case 'name':
      return expression.id;
    case 'pi':
      return 'pi';
    case 'negative':
      return `(-${fullyBracketed(expression.of)})`;
    case 'sqrt':
      return `sqrt(${fullyBracketed(expression.of)})`;
    case 'power':
      return `(${fullyBracketed(expression.base)}^${expression.exponent})`;
    default: {
      const sign = { sum: '+', difference: '-', product: '*', quotient: '/' }[expression.is];
      return `(${fullyBracketed(expression.left)}${sign}${fullyBracketed(expression.right)})`;
    }
  }
}

/** Values for the names: some negative, none near zero. */
export const anyScope: fc.Arbitrary<Record<string, number>> = fc.record(
  Object.fromEntries(names.map((name) => [name, fc.integer({ min: -400, max: 400 }).map((n) => (n < 0 ? n - 20 : n + 20) / 97)])),
) as fc.Arbitrary<Record<string, number>>;

/** The same random cases in every run. */
export const repeatable = (numRuns: number) => ({ numRuns, seed: 20 });
