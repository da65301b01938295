import { describe, expect, test } from 'vitest';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { program } from '../../generators/quantities/program.ts';
import type { Summary } from '../../generators/quantities/step.ts';
import { fitLine } from '../../generators/quantities/summary.ts';
import { round } from '../../generators/quantities/written.ts';
import { type Random, streams } from '../../generators/random.ts';

const line = (by: Summary['by'], id: string, byEye: boolean): Summary => ({ kind: 'summary', id, tex: id, unit: '', by, of: ['x', 'y'], digits: { figures: 3 }, ...(byEye && { byEye: true }) });
const steps = (byEye: boolean) =>
  program([
    { kind: 'reading', id: 'x', tex: 'x', unit: '', per: 'points' },
    { kind: 'reading', id: 'y', tex: 'y', unit: '', per: 'points' },
    line('slope', 'slope', byEye),
    line('intercept', 'intercept', byEye),
    { kind: 'relation', id: 'ratio', tex: 'k', unit: '', as: 'slope / intercept', digits: { figures: 3 } },
  ]);

const ranges = (byEye: boolean, [x, y]: [number[], number[]], own = {}) => acceptRanges(steps(byEye), { x: x.map(String), y: y.map((value) => round(value, { figures: 4 }, 'even')) }, { tables: false, drawn: {} }, own);

/** Points of a school's graph: five or six, equally spaced, 1 % of scatter. */
function points(random: Random): [number[], number[]] {
  const x = Array.from({ length: random.integer(5, 6) }, (_, i) => 20 * (i + 1));
  return [x, x.map((value) => (0.5 + 0.04 * value) * (1 + 0.01 * random.normal()))];
}

/** Ways of laying a line that do not know of squares: each gives a slope and a place that the line passes. */
const median = (values: number[]) => {
  const sorted = values.toSorted((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
};
const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const ways: Record<string, (x: number[], y: number[]) => { slope: number; at: [number, number] }> = {
  'between the middles of the lower and the upper half': (x, y) => {
    const half = Math.floor(x.length / 2);
    const [low, high] = [[mean(x.slice(0, half)), mean(y.slice(0, half))], [mean(x.slice(-half)), mean(y.slice(-half))]] as [[number, number], [number, number]];
    return { slope: (high[1] - low[1]) / (high[0] - low[0]), at: [mean(x), mean(y)] };
  },
  'the middle of all slopes between two points': (x, y) => {
    const slopes = x.flatMap((_, i) => x.slice(i + 1).map((__, j) => (y[i + 1 + j]! - y[i]!) / (x[i + 1 + j]! - x[i]!)));
    const slope = median(slopes);
    return { slope, at: [0, median(y.map((value, i) => value - slope * x[i]!))] };
  },
  'as many points above as below, parallel to the ends': (x, y) => {
    const slope = (y.at(-1)! - y[0]!) / (x.at(-1)! - x[0]!);
    return { slope, at: [0, median(y.map((value, i) => value - slope * x[i]!))] };
  },
};

describe('a line that a student lays by eye and reads off to half a millimetre', () => {
  test.each(Object.entries(ways))('%s, is accepted in all but 2 of 100', (_, way) => {
    const random = streams('by eye').of('lines');
    let [outside, all] = [0, 0];
    for (let i = 0; i < 2000; i++) {
      const [x, y] = points(random);
      const { slope, at } = way(x, y);
      const read = (value: number) => value + 0.5 * random.between(-1, 1) * (Math.max(...y) / 100);
      const [from, to] = [at[1] + slope * (x[0]! - at[0]), at[1] + slope * (x.at(-1)! - at[0])];
      const seen = { slope: (read(to) - read(from)) / (x.at(-1)! - x[0]!), intercept: read(at[1] - slope * at[0]) };
      const accepted = ranges(true, [x, y]);
      for (const id of ['slope', 'intercept'] as const) {
        const [low, high] = accepted.get(id)![0]!;
        all++;
        if (seen[id] < low || seen[id] > high) outside++;
      }
    }
    expect(outside / all).toBeLessThan(0.02);
  });

  test('is not accepted where the line is to be worked out', () => {
    const table = points(streams('by eye').of('one'));
    const { slope, uSlope } = fitLine(...table);
    const inside = (byEye: boolean) => {
      const [low, high] = ranges(byEye, table).get('slope')![0]!;
      return low <= slope + uSlope && slope + uSlope <= high;
    };
    expect(inside(true)).toBe(true);
    expect(inside(false)).toBe(false);
  });

  test('does not widen what follows: that is judged on the line that was laid', () => {
    const table = points(streams('by eye').of('one'));
    expect(ranges(true, table).get('ratio')).toEqual(ranges(false, table).get('ratio'));
    const [low, high] = ranges(true, table, { slope: ['0.0420'], intercept: ['0.400'] }).get('ratio')![0]!;
    expect(low <= 0.105 && 0.105 <= high).toBe(true);
    expect(high - low).toBeLessThan(0.002);
  });
});
