import * as I from './interval.ts';
import type { Interval } from './step.ts';

/** Partials of the least-squares slope and intercept by every x and every y: [column][row]. */
export interface LineGradient {
  slope: Interval[][];
  intercept: Interval[][];
}

/**
 * Intervals that hold the partials at every point of a box; for a box that is one point, the partials themselves.
 * They come from slope = Σ(dx·dy) / Σ(dx²), with dx and dy counted from the means.
 */
export function lineGradient(x: readonly Interval[], y: readonly Interval[]): LineGradient {
  const share = I.point(1 / x.length);
  const fromMean = (column: readonly Interval[]) => column.map((entry) => I.difference(entry, I.product(share, total(column))));
  const dx = fromMean(x);
  const dy = fromMean(y);
  const sxx = total(dx.map((d) => I.power(d, 2)));
  const slope = I.quotient(total(dx.map((d, i) => I.product(d, dy[i]!))), sxx);
  const residuals = dy.map((d, i) => I.difference(d, I.product(slope, dx[i]!)));
  const byX = dx.map((d, i) => I.quotient(I.difference(residuals[i]!, I.product(slope, d)), sxx));
  const byY = dx.map((d) => I.quotient(d, sxx));
  const xMean = I.product(share, total(x));
  const level = (slopes: Interval[], own: Interval) => slopes.map((by) => I.difference(I.product(own, share), I.product(xMean, by)));
  return { slope: [byX, byY], intercept: [level(byX, I.negative(slope)), level(byY, I.point(1))] };
}

const total = (entries: readonly Interval[]): Interval => entries.reduce(I.sum, I.point(0));
