import type { Interval } from './step.ts';

/** What schools put for π, from 3.14 to 22/7; the true value lies between. */
export const schoolPi: Interval = [3.14, 22 / 7];

export const point = (value: number): Interval => [value, value];
export const negative = ([low, high]: Interval): Interval => [-high, -low];
export const sum = (a: Interval, b: Interval): Interval => [a[0] + b[0], a[1] + b[1]];
export const difference = (a: Interval, b: Interval): Interval => [a[0] - b[1], a[1] - b[0]];
export const hull = (...all: Interval[]): Interval => [Math.min(...all.map((i) => i[0])), Math.max(...all.map((i) => i[1]))];

export function product(a: Interval, b: Interval): Interval {
  // Zero times an end without bound is zero: every number inside the bound gives zero.
  const times = (x: number, y: number) => (x === 0 || y === 0 ? 0 : x * y);
  const corners = [times(a[0], b[0]), times(a[0], b[1]), times(a[1], b[0]), times(a[1], b[1])];
  return [Math.min(...corners), Math.max(...corners)];
}

/** Division by an interval that holds zero can give anything. */
export function quotient(a: Interval, b: Interval): Interval {
  return b[0] <= 0 && b[1] >= 0 ? [-Infinity, Infinity] : product(a, [1 / b[1], 1 / b[0]]);
}

/** A whole power by repeated multiplication: the same bits in every engine. */
export function powerOf(base: number, exponent: number): number {
  let out = base;
  for (let i = 1; i < exponent; i++) out *= base;
  return out;
}

export function power(a: Interval, exponent: number): Interval {
  const low = powerOf(a[0], exponent);
  const high = powerOf(a[1], exponent);
  const holdsZero = a[0] <= 0 && a[1] >= 0;
  return exponent % 2 === 0 && holdsZero ? [0, Math.max(low, high)] : [Math.min(low, high), Math.max(low, high)];
}

export function sqrt([low, high]: Interval): Interval {
  return [Math.sqrt(Math.max(0, low)), Math.sqrt(high)];
}
