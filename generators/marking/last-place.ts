import type { Digits, Written } from '../quantities/step.ts';
import { decimalsOf, parts } from '../quantities/written.ts';

/** The power of ten of the last digit that is written: −2 for '2.63', −9 for '4.97e-7'. */
export function lastPlace(written: Written): number {
  const [mantissa, exponent] = parts(written);
  return exponent - decimalsOf(mantissa);
}

/** The power of ten of the last digit that a value is to be written with; of zero, the last decimal or 0. */
export function statedPlace(value: number, digits: Digits): number {
  if ('decimals' in digits) return -digits.decimals;
  if (value === 0) return 0;
  // Only the power of ten is taken of this rounding, which can be wrong in the last digit of a tie.
  const [, exponent] = value.toExponential(digits.figures - 1).split('e');
  return Number(exponent) - digits.figures + 1;
}
