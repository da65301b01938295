import type { Layout, Plotted } from '../experiments/layout.ts';
import { type Axis, along, perSquare, valueAt } from '../figures/axis.ts';
import { type Graph, axesOf, graph } from '../figures/graph.ts';
import { graphPaper } from '../figures/graph-paper.ts';
import type { StraightLine } from '../figures/plot.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Summary } from '../quantities/step.ts';
import { summaryMethods } from '../quantities/summary.ts';
import { round } from '../quantities/written.ts';
import type { Worked } from './worked.ts';

/** What stands along the axes of each graph, by its name, in letters and not in TeX. */
export type GraphsInWords = Readonly<Record<string, Record<'x' | 'y', { quantity: string; unit: string }>>>;

interface GraphWords {
  figures: FigureWords;
  graphs: GraphsInWords;
}

/** A graph as a page shows it. */
export interface PageGraph {
  svg: string;
  /** What a square of the paper, between two heavy lines, stands for along each axis, '0.5 Ω'; nothing while the student chooses the scales. */
  scales?: Record<'x' | 'y', string>;
  /** A straight line is fitted to the points. */
  fitted: boolean;
}

/** Squares of 10 mm that fit across a page, and up where a table stands above. */
const SQUARES = [15, 12] as const;

/** A key's plot is to be looked at, not drawn on: smaller, it stands on one page with its table. */
const ON_KEY = 0.85;

/** Empty graph paper for each graph of an experiment, by its name; a square more each way, for numbers and names along the axes. */
export function graphPapers(layout: Layout, id: string, words: FigureWords): Record<string, PageGraph> {
  const paper = (name: string) => graphPaper({ id: `${id}-${name}`, squares: [SQUARES[0] + 1, SQUARES[1] + 1] }, words);
  return Object.fromEntries(plotted(layout).map(({ graph: name }) => [name, { svg: paper(name).svg, fitted: false }]));
}

/** The graphs of an experiment with points and line, with its slope triangle, or curve, by their names. */
export function plots(layout: Layout, worked: Worked, id: string, words: GraphWords): Record<string, PageGraph> {
  return Object.fromEntries(plotted(layout).map((one) => [one.graph, plot(one, worked, `${id}-${one.graph}`, words)]));
}

const plotted = ({ observations }: Layout) => observations.filter((block): block is Plotted => 'graph' in block);

function plot(one: Plotted, worked: Worked, id: string, { figures, graphs }: GraphWords): PageGraph {
  const names = graphs[one.graph]!;
  const written = (name: string) => worked.values.written.get(name)!;
  const axis = (which: 'x' | 'y') => ({ ...names[which], ...(one.fromZero?.includes(which) && { fromZero: true }) });
  const drawn = {
    id,
    x: axis('x'),
    y: axis('y'),
    points: written(one.x).map((x, row) => ({ x, y: written(one.y)[row]!, ux: worked.worst(one.x, row), uy: worked.worst(one.y, row) })),
    squares: SQUARES,
    enlarge: ON_KEY,
  };
  const line = lineOf(one, worked);
  const axes = axesOf({ ...drawn, ...(line && { line }) }, SQUARES);
  const through = line ? { line, triangle: triangle({ ...drawn, line }, axes.x, names) } : { curve: true };
  const { svg } = graph({ ...drawn, plotted: true, ...through }, figures);
  return { svg, scales: { x: inUnit(perSquare(axes.x), names.x.unit), y: inUnit(perSquare(axes.y), names.y.unit) }, fitted: line !== undefined };
}

/** The line through the points as they are plotted, which are the values as they are written. */
function lineOf({ slope, intercept }: Plotted, { program, values }: Worked): StraightLine | undefined {
  const fitted = (id: string) => {
    const { by, of } = program.step(id) as Summary;
    return summaryMethods[by].value(of.map((column) => values.written.get(column)!.map(Number)));
  };
  return slope === undefined ? undefined : { slope: fitted(slope), intercept: intercept === undefined ? 0 : fitted(intercept) };
}

/** A triangle over most of the line, between heavy lines of the paper where there are two, so that its run is a round number; its rise has a figure more than a slope, which is worked from it. */
function triangle({ points, line }: Pick<Graph, 'points'> & { line: { slope: number } }, axis: Axis, names: GraphsInWords[string]) {
  const xs = points.map(({ x }) => Number(x));
  const ends = [Math.min(...xs), Math.max(...xs)] as const;
  // A point on a heavy line may lie a trifle to its wrong side.
  const squares = [Math.ceil(along(axis, ends[0]) - 1e-9), Math.floor(along(axis, ends[1]) + 1e-9)] as const;
  const [x1, x2] = squares[1] > squares[0] ? squares.map((square) => valueAt(axis, square)) as [number, number] : ends;
  const legend = ({ quantity, unit }: { quantity: string; unit: string }, size: number, figures: number) =>
    `Δ${/^\p{L}$/u.test(quantity) ? quantity : `(${quantity})`} = ${inUnit(round(size, { figures }, 'even').replace('-', '−'), unit)}`;
  return { x1, x2, run: legend(names.x, x2 - x1, 3), rise: legend(names.y, line.slope * (x2 - x1), 4) };
}

const inUnit = (number: string, unit: string) => (unit === '' ? number : `${number} ${unit}`);
