import { describe, expect, it } from 'vitest';
import { graph, type Graph } from '../../generators/figures/graph.ts';
import { graphPaper } from '../../generators/figures/graph-paper.ts';
import type { Point } from '../../generators/figures/svg.ts';
import { elements, labels, polylines, readScale, words } from './read-svg.ts';

const points = [
  { x: '20.0', y: '1.31', uy: 0.05 },
  { x: '45.0', y: '2.90', uy: 0.1 },
  { x: '70.0', y: '4.44', uy: 0.15 },
];
const line = { slope: 0.0626, intercept: 0.062 };
const drawing: Graph = {
  id: 'graph',
  x: { quantity: 'L', unit: 'cm' },
  y: { quantity: 'X', unit: 'Ω' },
  points,
  plotted: true,
  line,
  triangle: { x1: 25, x2: 65, run: 'ΔL', rise: 'ΔX' },
};
const draw = (more: Partial<Graph> = {}) => graph({ ...drawing, ...more }, words);

/** A place on the paper in the units of the axes; numbers stand 1 mm below the middle of their line. */
function read(svg: string, [x, y]: Point): Point {
  return [readScale(labels(svg, 'x-number'), 0, x), readScale(labels(svg, 'y-number'), 1, y + 1)];
}

const middle = ([a, b]: Point[]): Point => [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2];

describe('graph', () => {
  it('plots a cross at every point', () => {
    const { svg } = draw();
    const crosses = polylines(svg, 'points').filter((_, i) => i % 2 === 0).map((stroke) => read(svg, middle(stroke)));
    expect(crosses).toHaveLength(points.length);
    crosses.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(Number(points[i]!.x), 2);
      expect(y).toBeCloseTo(Number(points[i]!.y), 3);
    });
  });

  it('reaches an uncertainty above and below each point', () => {
    const { svg } = draw();
    const bars = polylines(svg, 'bars').filter((_, i) => i % 3 === 0);
    bars.forEach(([low, high], i) => {
      expect(read(svg, low!)[1]).toBeCloseTo(Number(points[i]!.y) - points[i]!.uy, 3);
      expect(read(svg, high!)[1]).toBeCloseTo(Number(points[i]!.y) + points[i]!.uy, 3);
    });
  });

  it('draws the line and the triangle where the equation says', () => {
    const { svg } = draw();
    const [start, corner, end] = polylines(svg, 'triangle')[0]!;
    for (const place of [...polylines(svg, 'line')[0]!, start!, end!]) {
      const [x, y] = read(svg, place);
      expect(y).toBeCloseTo(line.slope * x + line.intercept, 3);
    }
    expect(corner).toEqual([end![0], start![1]]);
  });

  it('keeps a steep line on the paper', () => {
    const { svg } = draw({ line: { slope: 0.2, intercept: -6 } });
    const [low, high] = [labels(svg, 'y-number')[0]!, labels(svg, 'y-number').at(-1)!].map(({ text }) => Number(text));
    for (const place of polylines(svg, 'line')[0]!) {
      const [, y] = read(svg, place);
      expect(y).toBeGreaterThan(low! - 1e-3);
      expect(y).toBeLessThan(high! + 1e-3);
    }
  });

  it('shows the student axes alone: no point, no line, not even in words', () => {
    const { line: _, triangle: __, ...bare } = drawing;
    const { svg, seen } = graph({ ...bare, plotted: false }, words);
    expect(elements(svg).filter(({ attributes }) => ['points', 'bars', 'line', 'triangle'].includes(attributes['data-part'] ?? ''))).toEqual([]);
    for (const { x, y } of points) expect(seen).not.toMatch(new RegExp(`${x}|${y}`));
  });

  it('leaves out every other number where they would run together', () => {
    const wide = [{ x: '0.01011', y: '1' }, { x: '0.01029', y: '3' }];
    const { svg } = draw({ points: wide });
    const numbers = labels(svg, 'x-number');
    expect(numbers[1]!.at[0] - numbers[0]!.at[0]).toBeCloseTo(20, 6);
  });
});

describe('graphPaper', () => {
  it('rules a line every millimetre and a stronger one every ten, true to size', () => {
    const { svg } = graphPaper({ id: 'paper', squares: [12, 8] }, words);
    const upright = (part: string) => polylines(svg, part).filter(([a, b]) => a![0] === b![0]).map(([a]) => a![0]);
    expect(upright('heavy')).toHaveLength(13);
    expect(upright('heavy')[1]! - upright('heavy')[0]!).toBeCloseTo(10, 6);
    expect(upright('fine')).toHaveLength(96);
    expect(svg).toMatch(/viewBox="0 0 121 81" width="121mm" height="81mm"/);
  });
});
