import { Decimal } from 'decimal.js';
import type { Digits, Written } from './step.ts';

/** Which way a tie goes: to the even digit (ISO 80000-1 Annex B, rule A; IS 2) or away from zero (rule B). */
export type Ties = 'even' | 'up';

/** A double carries noise beyond its thirteenth significant figure; the decimal that was meant does not. */
const MEANT_FIGURES = 13;

const LARGEST_PLAIN_EXPONENT = 5;
const SMALLEST_PLAIN_EXPONENT = -3;

/** Rounds in decimal, never in binary: 2.15 to one decimal is a tie, though its double lies below. */
export function round(value: number, digits: Digits, ties: Ties): Written {
  if (!Number.isFinite(value)) throw new RangeError(`cannot round ${value}`);
  const mode = ties === 'even' ? Decimal.ROUND_HALF_EVEN : Decimal.ROUND_HALF_UP;
  const meant = new Decimal(value).toSignificantDigits(MEANT_FIGURES);
  if ('decimals' in digits) return withoutNegativeZero(meant.toFixed(digits.decimals, mode));
  const rounded = meant.toSignificantDigits(digits.figures, mode);
  return inPlainRange(rounded)
    ? rounded.toFixed(Math.max(0, digits.figures - 1 - rounded.e))
    : rounded.toExponential(digits.figures - 1).replace('e+', 'e');
}

function inPlainRange(value: Decimal): boolean {
  return value.isZero() || (value.e <= LARGEST_PLAIN_EXPONENT && value.e >= SMALLEST_PLAIN_EXPONENT);
}

function withoutNegativeZero(text: string): string {
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}

/** The same digits with the decimal point moved: a change between units by a power of ten, no digit lost. */
export function shift(written: Written, tens: number): Written {
  if (tens === 0) return written;
  const [mantissa, exponent] = parts(written);
  const moved = exponent + tens;
  const plain = new Decimal(`${mantissa}e${moved}`);
  const decimals = Math.max(0, decimalsOf(mantissa) - moved);
  return inPlainRange(plain) ? plain.toFixed(decimals) : `${mantissa}e${moved}`;
}

/** Mantissa and power of ten as they are written: '4.97e-7' is ['4.97', -7], '43.2' is ['43.2', 0]. */
export function parts(written: Written): [mantissa: string, exponent: number] {
  const [mantissa = '', exponent = '0'] = written.split('e');
  return [mantissa, Number(exponent)];
}

/** Figures after the decimal point of a mantissa. */
export function decimalsOf(mantissa: string): number {
  return mantissa.split('.')[1]?.length ?? 0;
}
