import { describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import type { Plotted } from '../../generators/experiments/layout.ts';
import type { Point } from '../../generators/figures/svg.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { fitThroughOrigin } from '../../generators/quantities/origin-line.ts';
import { fitLine } from '../../generators/quantities/summary.ts';
import { graphPapers, plots } from '../../generators/sheets/graphs.ts';
import { issueSheets, programOf } from '../../generators/sheets/issue.ts';
import { type Worked, workOut } from '../../generators/sheets/worked.ts';
import { overlaps } from '../figures/boxes.ts';
import { elements, labels, polylines, readScale, words as figures } from '../figures/read-svg.ts';
import { known, tables } from './class.ts';

const SHEETS = 24;

interface Drawn {
  svg: string;
  scales: Record<'x' | 'y', string>;
  block: Plotted;
  worked: Worked;
}

/** The plots of a small class, with what they were made from. */
function plotsOf(id: string): Drawn[] {
  const experiment = experimentNamed(id);
  const order = readOrder(`experiment: ${id}\nseed: graphs\n`, 'order.yaml', known);
  const recipients = Array.from({ length: SHEETS }, (_, i) => ({ roll: String(i + 1), name: '' }));
  const graphs = loadWords('en', id).experiment.graphs!;
  const block = experiment.layout.observations.find((one): one is Plotted => 'graph' in one)!;
  return issueSheets({ order, experiment, tables, secret: 'graphs' }, recipients).map(({ sheet }, place) => {
    const worked = workOut(sheet, programOf(experiment, sheet));
    const { svg, scales } = plots(experiment.layout, worked, `graph-${place}`, { figures, graphs })[block.graph]!;
    return { svg, scales: scales!, block, worked };
  });
}

/** A place on the paper in the units of the axes; numbers stand 1 mm below the middle of their line. */
const read = (svg: string, [x, y]: Point): Point => [readScale(labels(svg, 'x-number'), 0, x), readScale(labels(svg, 'y-number'), 1, y + 1)];
const column = ({ worked }: Drawn, id: string) => worked.values.written.get(id)!.map(Number);
const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
const numbers = (svg: string, part: string) => labels(svg, part).map(({ text }) => Number(text.replace('−', '-')));

/** A line by the rules of least squares, from what the table shows. */
function lineOf(drawn: Drawn): { slope: number; intercept: number } {
  const [x, y] = [column(drawn, drawn.block.x), column(drawn, drawn.block.y)];
  return drawn.block.intercept === undefined ? { slope: fitThroughOrigin(x, y).slope, intercept: 0 } : fitLine(x, y);
}

describe.each(['graph', 'resistance-length', 'temperature-coefficient'])('the plots of %s, read back off the paper', (id) => {
  const all = plotsOf(id);
  /** What a tenth of a millimetre is on each axis. */
  const fine = ({ svg }: Drawn): Point => [span(numbers(svg, 'x-number')) / 1500, span(numbers(svg, 'y-number')) / 1200];

  test('have a cross at each row of the table', () => {
    for (const drawn of all) {
      const crosses = polylines(drawn.svg, 'points').filter((_, i) => i % 2 === 0).map(([a, b]) => read(drawn.svg, [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2]));
      const [dx, dy] = fine(drawn);
      const [x, y] = [column(drawn, drawn.block.x), column(drawn, drawn.block.y)];
      expect(crosses).toHaveLength(x.length);
      crosses.forEach(([cx, cy], row) => {
        expect(Math.abs(cx - x[row]!)).toBeLessThan(dx);
        expect(Math.abs(cy - y[row]!)).toBeLessThan(dy);
      });
    }
  });

  test('have the line of least squares, drawn to the y axis where that is at zero', () => {
    for (const drawn of all) {
      const { slope, intercept } = lineOf(drawn);
      const [from, to] = polylines(drawn.svg, 'line')[0]!.map((place) => read(drawn.svg, place)) as [Point, Point];
      for (const [x, y] of [from, to]) expect(Math.abs(y - slope * x - intercept)).toBeLessThan(fine(drawn)[1]);
      expect(to[0]).toBeGreaterThanOrEqual(Math.max(...column(drawn, drawn.block.x)) - fine(drawn)[0]);
      expect(Math.abs(from[0])).toBeLessThan(fine(drawn)[0]);
      expect(Math.abs(from[1] - intercept)).toBeLessThan(fine(drawn)[1]);
    }
  });

  test('have a triangle whose sides are as long as is written at them, and whose slope is the line’s', () => {
    for (const drawn of all) {
      const [start, corner, end] = polylines(drawn.svg, 'triangle')[0]!.map((place) => read(drawn.svg, place)) as [Point, Point, Point];
      const written = labels(drawn.svg).filter(({ text }) => text.startsWith('Δ')).map(({ text }) => Number(/= ([−\d.]+)/.exec(text)![1]!.replace('−', '-')));
      // Each end is read to a tenth of a millimetre; four figures are good to 5 in ten thousand.
      expect(Math.abs(written[0]! - (corner[0] - start[0]))).toBeLessThan(2 * fine(drawn)[0]);
      expect(Math.abs(written[1]! - (end[1] - corner[1]))).toBeLessThan(2 * fine(drawn)[1]);
      expect(Math.abs(written[1]! / written[0]! / lineOf(drawn).slope - 1)).toBeLessThan(6e-4);
    }
  });

  test('have triangles over more than half of the points', () => {
    for (const drawn of all) {
      const [start, corner] = polylines(drawn.svg, 'triangle')[0]!.map((place) => read(drawn.svg, place)) as [Point, Point, Point];
      expect(corner[0] - start[0]).toBeGreaterThan(span(column(drawn, drawn.block.x)) / 2);
    }
  });

  test('have squares of 1, 2 or 5 times a power of ten, as the note below says', () => {
    for (const { svg, scales } of all) {
      for (const [part, scale] of [['x-number', scales.x], ['y-number', scales.y]] as const) {
        const marks = numbers(svg, part);
        const square = parseFloat(scale);
        expect(marks[1]! - marks[0]!).toBeCloseTo(square, 9);
        expect([1, 2, 5]).toContain(Number(square.toExponential().split('e')[0]));
      }
    }
  });

  test('fill more than a third of the paper each way: steps of 1, 2 and 5 leave no more empty', () => {
    for (const drawn of all) {
      const used = (part: string, values: number[]) => span(values) / span(numbers(drawn.svg, part));
      expect(used('x-number', [...column(drawn, drawn.block.x), 0])).toBeGreaterThan(0.33);
      expect(used('y-number', [...column(drawn, drawn.block.y), lineOf(drawn).intercept])).toBeGreaterThan(0.33);
    }
  });

  test('keep all letters apart and on the paper', () => {
    for (const { svg } of all) {
      expect(overlaps(labels(svg))).toEqual([]);
      const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!.map(Number);
      for (const { at: [x, y], anchor, text, size } of labels(svg).filter(({ turned }) => !turned)) {
        const long = 0.5 * size * text.length;
        const left = anchor === 'middle' ? x - long / 2 : anchor === 'end' ? x - long : x;
        expect(left >= 0 && left + long <= width!, text).toBe(true);
        expect(y > 0 && y < height!).toBe(true);
      }
    }
  });
});

test('the worksheet has paper alone: no point, no number, no word of the answer', () => {
  const { layout } = experimentNamed('graph');
  const { svg, scales } = graphPapers(layout, 'paper', figures)['balance']!;
  expect(scales).toBeUndefined();
  expect(labels(svg)).toEqual([]);
  expect(elements(svg).filter(({ attributes }) => ['points', 'bars', 'line', 'triangle'].includes(attributes['data-part'] ?? ''))).toEqual([]);
});
