import type { Digits, Written } from '../quantities/step.ts';
import { parts } from '../quantities/written.ts';

const RAISED: Readonly<Record<string, string>> = { '-': '⁻', 0: '⁰', 1: '¹', 2: '²', 3: '³', 4: '⁴', 5: '⁵', 6: '⁶', 7: '⁷', 8: '⁸', 9: '⁹' };

/** A number as text to be read, on one line: '4.97e-7' is '4.97 × 10⁻⁷', with a true minus. */
export function shownNumber(written: Written): string {
  const [mantissa, exponent] = parts(written);
  const tens = exponent === 0 ? '' : `\u00a0×\u00a010${[...String(exponent)].map((sign) => RAISED[sign]!).join('')}`;
  return `${mantissa.replace('-', '−')}${tens}`;
}

/** A number with its unit, which stays on its line. */
export function shownQuantity(written: Written, unit: string): string {
  return unit === '' ? shownNumber(written) : `${shownNumber(written)}\u00a0${unit.replaceAll(' ', '\u00a0')}`;
}

/** Marks in halves: '8½', '½', '3'. */
export function shownMarks(marks: number): string {
  const whole = Math.floor(marks);
  return whole === marks ? String(whole) : `${whole === 0 ? '' : whole}½`;
}

export const finer = (digits: Digits): Digits => ('decimals' in digits ? { decimals: digits.decimals + 1 } : { figures: digits.figures + 1 });
