import { Decimal } from 'decimal.js';
import type { Digits, Interval, Written } from './step.ts';

/** Which way a tie goes: to the even digit (ISO 80000-1 Annex B, rule A; IS 2) or away from zero (rule B). */
export type Ties = 'even' | 'up';

/** A double carries noise beyond its thirteenth significant figure; the decimal that was meant does not. */
const MEANT_FIGURES = 13;

const LARGEST_PLAIN_EXPONENT = 5;
const SMALLEST_PLAIN_EXPONENT = -3;

/** Rounds in decimal, never in binary: 2.15 to one decimal is a tie, though its double lies below. */
export function round(value: number, digits: Digits, ties: Ties): Written {
  return place(value, digits, ties === 'even' ? Decimal.ROUND_HALF_EVEN : Decimal.ROUND_HALF_UP);
}

function place(value: number, digits: Digits, mode: Decimal.Rounding): Written {
  if (!Number.isFinite(value)) throw new RangeError(`cannot round ${value}`);
  const meant = new Decimal(value).toSignificantDigits(MEANT_FIGURES);
  if ('decimals' in digits) return withoutNegativeZero(inFull(meant.toDecimalPlaces(digits.decimals, mode), digits.decimals));
  const rounded = meant.toSignificantDigits(digits.figures, mode);
  return inPlainRange(rounded)
    ? inFull(rounded, Math.max(0, digits.figures - 1 - rounded.e))
    : rounded.toExponential(digits.figures - 1).replace('e+', 'e');
}

/** A decimal that has no more than so many decimals, written with all of them. This is decimal.js's toFixed, not that of Number, and has nothing left to round. */
function inFull(value: Decimal, decimals: number): Written {
  return value.toFixed(decimals);
}

function inPlainRange(value: Decimal): boolean {
  return value.isZero() || (value.e <= LARGEST_PLAIN_EXPONENT && value.e >= SMALLEST_PLAIN_EXPONENT);
}

function withoutNegativeZero(text: string): string {
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}

/** The ends of an interval, rounded away from each other, so that nothing inside is left out. */
export function roundOutward([low, high]: Interval, digits: Digits): [Written, Written] {
  return [place(low, digits, Decimal.ROUND_FLOOR), place(high, digits, Decimal.ROUND_CEIL)];
}

/** The same digits with the decimal point moved: a change between units by a power of ten, no digit lost. */
export function shift(written: Written, tens: number): Written {
  if (tens === 0) return written;
  const [mantissa, exponent] = parts(written);
  const moved = exponent + tens;
  const plain = new Decimal(`${mantissa}e${moved}`);
  const decimals = Math.max(0, decimalsOf(mantissa) - moved);
  return inPlainRange(plain) ? inFull(plain, decimals) : `${mantissa}e${moved}`;
}

/** Mantissa and power of ten as they are written: '4.97e-7' is ['4.97', -7], '43.2' is ['43.2', 0]. */
export function parts(written: Written): [mantissa: string, exponent: number] {
  const [mantissa = '', exponent = '0'] = written.split('e');
  return [mantissa, Number(exponent)];
}

/** Half a unit in the last place that is written: 0.05 for '43.2', 0.5e-9 for '4.97e-7'. */
export function halfUnit(written: Written): number {
  const [mantissa, exponent] = parts(written);
  return Number(`0.5e${exponent - decimalsOf(mantissa)}`);
}

/** Figures after the decimal point of a mantissa. */
export function decimalsOf(mantissa: string): number {
  return mantissa.split('.')[1]?.length ?? 0;
}

/** The same digits with one figure before the decimal point: '49e-8' is '4.9e-7', '100e-8' is '1.00e-6'. */
export function scientific(written: Written): Written {
  const [mantissa] = parts(written);
  return new Decimal(written).toExponential(mantissa.replace(/\D/g, '').length - 1).replace('e+', 'e');
}
