import { linearRegression, mean as meanOf, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import type { Interval } from '../../generators/quantities/step.ts';
import { fitLine, mean, standardDeviation, summaryMethods, summaryRange } from '../../generators/quantities/summary.ts';
import { type Random, streams } from '../../generators/random.ts';
import { expectWithin, numericalPartial } from './numerical.ts';

const { slope, intercept, 'slope through origin': originSlope } = summaryMethods;

/** Points about a line, as of a graph that a school draws. */
function points(random: Random): [x: number[], y: number[]] {
  const x = Array.from({ length: random.integer(3, 8) }, (_, i) => 10 * (i + 1) + random.between(-3, 3));
  return [x, x.map((value) => 0.3 + 0.041 * value + 0.05 * random.normal())];
}

describe('mean, standard deviation and line', () => {
  test('are those of simple-statistics', () => {
    const random = streams('summaries').of('values');
    for (let i = 0; i < 200; i++) {
      const [x, y] = points(random);
      const other = linearRegression(x.map((value, row) => [value, y[row]!]));
      expectWithin(mean(y), meanOf(y), 1e-13);
      expectWithin(standardDeviation(y), sampleStandardDeviation(y), 1e-12);
      expectWithin(fitLine(x, y).slope, other.m, 1e-11);
      expectWithin(fitLine(x, y).intercept, other.b, 1e-10);
    }
  });
  test('the residuals are scattered about the line, n - 2 in the divisor', () => {
    expect(fitLine([0, 1, 2, 3], [1, -1, -1, 1]).scatter).toBeCloseTo(Math.sqrt(4 / 2), 12);
  });
  test('points on a line have no scatter and no uncertainty', () => {
    const { uSlope, uIntercept, scatter } = fitLine([1, 2, 4], [3, 5, 9]);
    for (const none of [uSlope, uIntercept, scatter]) expect(none).toBeCloseTo(0, 12);
  });
});

describe('gradients are the numerical ones', () => {
  test.each(['mean', 'slope', 'intercept', 'slope through origin'] as const)('%s', (by) => {
    const random = streams('summaries').of('gradients', by);
    const { columns, gradient, value } = summaryMethods[by];
    for (let i = 0; i < 50; i++) {
      const table = points(random).slice(0, columns);
      const rows = table[0]!.length;
      const unflat = (args: number[]) => table.map((_, c) => args.slice(c * rows, (c + 1) * rows));
      gradient(table).flat().forEach((by, cell) => {
        const numerical = numericalPartial((args) => value(unflat(args)), table.flat(), cell);
        expect(Math.abs(by - numerical)).toBeLessThan(1e-8 * Math.max(...gradient(table).flat().map(Math.abs)));
      });
    }
  });
});

describe('the range of a summary', () => {
  const box = (column: number[], half: number): Interval[] => column.map((value) => [value - half, value + half]);
  /** Every corner of a box of cells. */
  const cornersOf = (table: Interval[][]): number[][][] =>
    Array.from({ length: 2 ** table.flat().length }, (_, bits) => table.map((column, c) => column.map((entry, row) => entry[(bits >> (c * column.length + row)) & 1]!)));

  test('of a mean is exact', () => {
    const [low, high] = summaryRange(summaryMethods.mean, [[[1, 2], [3, 3], [4, 7]]]);
    expect(low).toBeCloseTo(8 / 3, 14);
    expect(high).toBeCloseTo(4, 14);
  });

  test.each([['as rounding makes it', 0.05], ['a hundred times as wide', 5]])('of a line holds every corner of a box %s, and inside too', (_, half) => {
    const random = streams('summaries').of('attack', half);
    for (let i = 0; i < 40; i++) {
      const x = [10, 20, 30, 40].map((value) => value + random.between(-4, 4));
      const y = x.map((value) => 0.041 * value + random.between(-0.3, 0.3));
      const table = [box(x, random.between(0, half)), box(y, random.between(0, half / 20))];
      const inside = Array.from({ length: 100 }, () => table.map((column) => column.map(([low, high]) => random.between(low, high))));
      for (const method of [slope, intercept, originSlope]) {
        const [low, high] = summaryRange(method, table);
        for (const at of [...cornersOf(table), ...inside]) {
          const value = method.value(at);
          expect(low - 1e-12 <= value && value <= high + 1e-12, `${value} in ${low} to ${high}`).toBe(true);
        }
      }
    }
  });

  test('of a line is at most 1.1 times as wide as what the corners of a box reach, as rounding makes it', () => {
    const random = streams('summaries').of('width');
    let widest = 0;
    for (let i = 0; i < 20; i++) {
      const x = [10, 20, 30, 40].map((value) => value + random.between(-4, 4));
      const table = [box(x, 0.05), box(x.map((value) => 0.041 * value + random.between(-0.03, 0.03)), 0.005)];
      for (const method of [slope, intercept, originSlope]) {
        const reached = cornersOf(table).map((at) => method.value(at));
        const [low, high] = summaryRange(method, table);
        widest = Math.max(widest, (high - low) / (Math.max(...reached) - Math.min(...reached)));
      }
    }
    expect(widest).toBeLessThan(1.1);
  });

  test('of a line whose x may all be equal has no bound', () => {
    expect(summaryRange(slope, [[[1, 3], [2, 4]], [[1, 1], [2, 3]]])).toEqual([-Infinity, Infinity]);
  });
});
