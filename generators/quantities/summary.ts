import * as I from './interval.ts';
import { type LineGradient, lineGradient } from './line-gradient.ts';
import { fitThroughOrigin, originGradient } from './origin-line.ts';
import type { Interval, Summary } from './step.ts';

const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** The arithmetic mean. */
export function mean(values: readonly number[]): number {
  const first = total(values) / values.length;
  // A second pass takes back what rounding lost in the first.
  return first + total(values.map((value) => value - first)) / values.length;
}

/** The sample standard deviation, n − 1 in the divisor (JCGM 100:2008, 4.2.2). */
export function standardDeviation(values: readonly number[]): number {
  const centre = mean(values);
  return Math.sqrt(total(values.map((value) => (value - centre) * (value - centre))) / (values.length - 1));
}

/** The least-squares line y = slope · x + intercept, all points of equal weight (JCGM 100:2008, H.3). */
export interface Line {
  slope: number;
  intercept: number;
  /** Standard deviation of the residuals, n − 2 in the divisor. */
  scatter: number;
  /** Standard uncertainties and correlation coefficient of the two. */
  uSlope: number;
  uIntercept: number;
  correlation: number;
}

export function fitLine(x: readonly number[], y: readonly number[]): Line {
  const xMean = mean(x);
  const yMean = mean(y);
  const dx = x.map((value) => value - xMean);
  const sxx = total(dx.map((d) => d * d));
  const slope = total(dx.map((d, i) => d * (y[i]! - yMean))) / sxx;
  const intercept = yMean - slope * xMean;
  const residuals = y.map((value, i) => value - yMean - slope * dx[i]!);
  const scatter = Math.sqrt(total(residuals.map((r) => r * r)) / (x.length - 2));
  const uIntercept = scatter * Math.sqrt(1 / x.length + (xMean * xMean) / sxx);
  return {
    slope,
    intercept,
    scatter,
    uSlope: scatter / Math.sqrt(sxx),
    uIntercept,
    correlation: -xMean / Math.sqrt(sxx / x.length + xMean * xMean),
  };
}

/** What the engine needs of a summary, by hand where a formula of fixed length cannot say it. */
export interface SummaryMethod {
  /** Columns it takes. */
  columns: number;
  /** Numbers that it takes from the rows, which are degrees of freedom lost. */
  parameters: number;
  value(columns: readonly number[][]): number;
  /** Partial derivatives, [column][row]. */
  gradient(columns: readonly number[][]): number[][];
  /** Intervals that hold the partial derivatives at every point of a box. */
  gradientRange(columns: readonly Interval[][]): Interval[][];
  /**
   * The scatter of the rows as type A standard uncertainties of independent sources, and how the value moves
   * with each; degrees of freedom: rows − parameters. A line has two, its slope and its level at the mean x,
   * so that slope and intercept keep their correlation.
   */
  scatter(columns: readonly number[][]): { source: 'mean' | 'slope' | 'level'; by: number; u: number }[];
}

export const summaryMethods: Record<Summary['by'], SummaryMethod> = {
  mean: {
    columns: 1,
    parameters: 1,
    value: ([values]) => mean(values!),
    gradient: ([values]) => [values!.map(() => 1 / values!.length)],
    gradientRange: ([values]) => [values!.map(() => I.point(1 / values!.length))],
    scatter: ([values]) => [{ source: 'mean', by: 1, u: standardDeviation(values!) / Math.sqrt(values!.length) }],
  },
  slope: {
    columns: 2,
    parameters: 2,
    value: ([x, y]) => fitLine(x!, y!).slope,
    gradient: (columns) => atPoint(columns, 'slope'),
    gradientRange: ([x, y]) => lineGradient(x!, y!).slope,
    scatter: ([x, y]) => [{ source: 'slope', by: 1, u: fitLine(x!, y!).uSlope }],
  },
  'slope through origin': {
    columns: 2,
    parameters: 1,
    value: ([x, y]) => fitThroughOrigin(x!, y!).slope,
    gradient: ([x, y]) => middles(originGradient(x!.map(I.point), y!.map(I.point))),
    gradientRange: ([x, y]) => originGradient(x!, y!),
    scatter: ([x, y]) => [{ source: 'slope', by: 1, u: fitThroughOrigin(x!, y!).uSlope }],
  },
  intercept: {
    columns: 2,
    parameters: 2,
    value: ([x, y]) => fitLine(x!, y!).intercept,
    gradient: (columns) => atPoint(columns, 'intercept'),
    gradientRange: ([x, y]) => lineGradient(x!, y!).intercept,
    scatter([x, y]) {
      const { uSlope, scatter } = fitLine(x!, y!);
      return [
        { source: 'level', by: 1, u: scatter / Math.sqrt(x!.length) },
        { source: 'slope', by: -mean(x!), u: uSlope },
      ];
    },
  },
};

/** The gradient of a line at plain numbers. */
function atPoint(columns: readonly number[][], of: keyof LineGradient): number[][] {
  const [x, y] = columns.map((column) => column.map(I.point));
  return middles(lineGradient(x!, y!)[of]);
}

/** Intervals that are points, as numbers. */
const middles = (columns: readonly Interval[][]): number[][] => columns.map((column) => column.map(([by]) => by));

/**
 * The values a summary takes while each entry stays in its interval: the value at the middle, and each entry's
 * way from the middle times all that its partial is in the box (mean value theorem). Exact for a mean, an outer
 * bound for a line.
 */
export function summaryRange(method: SummaryMethod, columns: readonly Interval[][]): Interval {
  const middles = columns.map((column) => column.map(([low, high]) => (low + high) / 2));
  const ways = columns.map((column, c) => column.map((entry, row) => I.difference(entry, I.point(middles[c]![row]!))));
  const moves = method.gradientRange(columns).flatMap((column, c) => column.map((by, row) => I.product(by, ways[c]![row]!)));
  return moves.reduce(I.sum, I.point(method.value(middles)));
}
