import * as I from './interval.ts';
import type { Interval } from './step.ts';

/** The least-squares line through the origin, y = slope · x, all points of equal weight. */
export interface OriginLine {
  slope: number;
  /** Standard deviation of the residuals, n − 1 in the divisor: one number is taken from the points. */
  scatter: number;
  uSlope: number;
}

export function fitThroughOrigin(x: readonly number[], y: readonly number[]): OriginLine {
  const sxx = total(x.map((value) => value * value));
  const slope = total(x.map((value, i) => value * y[i]!)) / sxx;
  const residuals = y.map((value, i) => value - slope * x[i]!);
  const scatter = Math.sqrt(total(residuals.map((r) => r * r)) / (x.length - 1));
  return { slope, scatter, uSlope: scatter / Math.sqrt(sxx) };
}

/** Intervals that hold the partials of the slope by every x and every y at every point of a box: [column][row]. */
export function originGradient(x: readonly Interval[], y: readonly Interval[]): Interval[][] {
  const sum = (all: readonly Interval[]) => all.reduce(I.sum, I.point(0));
  const sxx = sum(x.map((value) => I.power(value, 2)));
  const slope = I.quotient(sum(x.map((value, i) => I.product(value, y[i]!))), sxx);
  const byX = x.map((value, i) => I.quotient(I.difference(y[i]!, I.product(I.point(2), I.product(slope, value))), sxx));
  const byY = x.map((value) => I.quotient(value, sxx));
  return [byX, byY];
}

const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
