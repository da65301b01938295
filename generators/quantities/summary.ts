import { difference, product, sum } from './interval.ts';
import type { Interval, Summary } from './step.ts';

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

function total(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
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
    scatter: ([values]) => [{ source: 'mean', by: 1, u: standardDeviation(values!) / Math.sqrt(values!.length) }],
  },
  slope: {
    columns: 2,
    parameters: 2,
    value: ([x, y]) => fitLine(x!, y!).slope,
    gradient: ([x, y]) => lineGradient(x!, y!).slope,
    scatter: ([x, y]) => [{ source: 'slope', by: 1, u: fitLine(x!, y!).uSlope }],
  },
  intercept: {
    columns: 2,
    parameters: 2,
    value: ([x, y]) => fitLine(x!, y!).intercept,
    gradient: ([x, y]) => lineGradient(x!, y!).intercept,
    scatter([x, y]) {
      const { uSlope, scatter } = fitLine(x!, y!);
      return [
        { source: 'level', by: 1, u: scatter / Math.sqrt(x!.length) },
        { source: 'slope', by: -mean(x!), u: uSlope },
      ];
    },
  },
};

/** Partials of slope and intercept by every x and y. */
function lineGradient(x: readonly number[], y: readonly number[]): Record<'slope' | 'intercept', number[][]> {
  const { slope, intercept } = fitLine(x, y);
  const xMean = mean(x);
  const dx = x.map((value) => value - xMean);
  const sxx = total(dx.map((d) => d * d));
  const residuals = y.map((value, i) => value - intercept - slope * x[i]!);
  const slopeByY = dx.map((d) => d / sxx);
  const slopeByX = dx.map((d, i) => (residuals[i]! - slope * d) / sxx);
  const each = (byColumn: number[], own: number) => byColumn.map((by) => own / x.length - xMean * by);
  return {
    slope: [slopeByX, slopeByY],
    intercept: [each(slopeByX, -slope), each(slopeByY, 1)],
  };
}

/**
 * The values a summary takes while each entry stays in its interval. A mean is exact. A line is a mean-value
 * bound, widened by the change of its gradient over the box: an outer bound for boxes as small as rounding makes them.
 */
export function summaryRange(method: SummaryMethod, columns: readonly Interval[][]): Interval {
  const middles = columns.map((column) => column.map(([low, high]) => (low + high) / 2));
  const value = method.value(middles);
  const gradients = [middles, ...cornersOf(columns)].map((at) => method.gradient(at));
  let range: Interval = [value, value];
  columns.forEach((column, c) =>
    column.forEach((entry, row) => {
      const slopes = gradients.map((gradient) => gradient[c]![row]!);
      const spread: Interval = [Math.min(...slopes), Math.max(...slopes)];
      range = sum(range, product(spread, difference(entry, [middles[c]![row]!, middles[c]![row]!])));
    }),
  );
  return range;
}

/** The boxes' ends column by column: enough to see how far the gradient moves. */
function cornersOf(columns: readonly Interval[][]): number[][][] {
  const choices = columns.length === 1 ? [[0], [1]] : [[0, 0], [0, 1], [1, 0], [1, 1]];
  return choices.map((ends) => columns.map((column, c) => column.map((entry) => entry[ends[c] as 0 | 1])));
}
