import type { Digits, Written } from '../quantities/step.ts';
import { decimalsOf, parts, round } from '../quantities/written.ts';

/** The power of ten of the last digit that is written: −2 for '2.63', −9 for '4.97e-7'. */
export function lastPlace(written: Written): number {
  const [mantissa, exponent] = parts(written);
  return exponent - decimalsOf(mantissa);
}

/** The power of ten of the last digit that a value is to be written with. */
export function statedPlace(value: number, digits: Digits): number {
  return lastPlace(round(value, digits, 'even'));
}
