import type { Written } from '../quantities/step.ts';

/** A decimal number as a whole number of its last place: 0.25 is 25 with 2 decimals. */
export interface Scaled {
  whole: number;
  decimals: number;
}

/** Reads a plain decimal, sign allowed, no power of ten; RangeError for anything else. */
export function scaled(text: Written): Scaled {
  const [, sign, integer, fraction = ''] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text) ?? [];
  if (integer === undefined) throw new RangeError(`"${text}" is not a plain decimal number`);
  const whole = Number(integer + fraction);
  return { whole: sign === '-' && whole !== 0 ? -whole : whole, decimals: fraction.length };
}

/** The whole number `text` stands for in units of 10^−decimals; RangeError where a digit would be lost. */
export function wholeIn(text: Written, decimals: number): number {
  const own = scaled(text);
  if (own.decimals > decimals) throw new RangeError(`"${text}" has more than ${decimals} decimals`);
  return own.whole * tenTo(decimals - own.decimals);
}

/** Writes a whole number of 10^−decimals: written(432, 1) is '43.2'. Digits are moved, nothing is rounded. */
export function written(whole: number, decimals: number): Written {
  if (!Number.isSafeInteger(whole)) throw new RangeError(`${whole} is not a whole number`);
  const digits = String(Math.abs(whole)).padStart(decimals + 1, '0');
  const point = digits.length - decimals;
  const text = decimals === 0 ? digits : `${digits.slice(0, point)}.${digits.slice(point)}`;
  return whole < 0 ? `-${text}` : text;
}

/** A written number over a whole one, exact: '0.5' over 50 is '0.01'. Undefined where the decimals do not end in nine places. */
export function quotient(text: Written, by: number): Written | undefined {
  let { whole, decimals } = scaled(text);
  for (; decimals <= 9; decimals++) {
    if (whole % by === 0) return written(whole / by, decimals);
    whole *= 10;
  }
  return undefined;
}

/** The mark of a scale nearest to a value in the same unit, as it is read; `division` is the scale's smallest, '0.1'. */
export function nearestMark(value: number, division: Written): Written {
  const { whole, decimals } = scaled(division);
  return written(Math.round((value * tenTo(decimals)) / whole) * whole, decimals);
}

/** 10^n for a whole n from 0 to 22: exact, and no power function. */
export function tenTo(n: number): number {
  let out = 1;
  for (let i = 0; i < n; i++) out *= 10;
  return out;
}
