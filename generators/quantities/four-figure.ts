import type { Expression } from './expression.ts';
import type { Interval } from './step.ts';

/** A logarithm with four places is off by at most half a unit of the fourth, which moves its number by this fraction. */
const LOGARITHM = 0.5e-4 * Math.LN10;
/** The antilogarithm is written with four figures: at worst half a unit in 1000. */
const ANTILOGARITHM = 0.5e-3;

/**
 * An outer bound for the same work done by four-figure logarithm tables. The bound is for one product of
 * factors and divisors; a sum or difference among them is one factor, worked before its logarithm is looked up.
 * A formula without a product is worked without tables.
 */
export function byFourFigureTables([low, high]: Interval, expression: Expression): Interval {
  const looked = logarithms(expression);
  if (looked < 2) return [low, high];
  const slack = Math.max(Math.abs(low), Math.abs(high)) * (LOGARITHM * (looked + 1) + ANTILOGARITHM);
  return [low - slack, high + slack];
}

/** How many logarithms are looked up, a power's counted once for each factor; twice two has one, added twice. */
function logarithms(expression: Expression): number {
  switch (expression.is) {
    case 'product':
    case 'quotient':
      return logarithms(expression.left) + logarithms(expression.right);
    case 'power':
      return expression.exponent * logarithms(expression.base);
    case 'negative':
      return logarithms(expression.of);
    default:
      return 1;
  }
}
