import type { Layout, Plotted } from '../experiments/layout.ts';
import { axisFor, along, valueAt } from '../figures/axis.ts';
import { graph } from '../figures/graph.ts';
import { graphPaper } from '../figures/graph-paper.ts';
import type { FigureWords } from '../figures/words.ts';
import { round } from '../quantities/written.ts';
import type { Worked } from './worked.ts';

/** What stands along the axes of each graph, by its name, in letters and not in TeX. */
export type GraphsInWords = Readonly<Record<string, Record<'x' | 'y', { quantity: string; unit: string }>>>;

interface GraphWords {
  figures: FigureWords;
  graphs: GraphsInWords;
}

/** Squares of 10 mm that fit across a page, and up where a table stands above. */
const SQUARES = [14, 10] as const;

/** Empty graph paper for each graph of an experiment, by its name. */
export function graphPapers(layout: Layout, id: string, words: FigureWords): Record<string, string> {
  return Object.fromEntries(plotted(layout).map(({ graph: name }) => [name, graphPaper({ id: `${id}-${name}`, squares: [SQUARES[0] + 1, SQUARES[1] + 1] }, words).svg]));
}

/** The graphs of an experiment with points, line and slope triangle, by their names. */
export function plots(layout: Layout, worked: Worked, id: string, words: GraphWords): Record<string, string> {
  return Object.fromEntries(plotted(layout).map((one) => [one.graph, plot(one, worked, `${id}-${one.graph}`, words)]));
}

const plotted = ({ observations }: Layout) => observations.filter((block): block is Plotted => 'graph' in block);

function plot(one: Plotted, worked: Worked, id: string, { figures, graphs }: GraphWords): string {
  const axes = graphs[one.graph]!;
  const written = (name: string) => worked.values.written.get(name)!;
  const exact = (name: string) => worked.values.exact.get(name)![0]!;
  const points = written(one.x).map((x, row) => ({ x, y: written(one.y)[row]!, uy: worked.worst(one.y, row) }));
  const line = { slope: exact(one.slope), intercept: one.intercept === undefined ? 0 : exact(one.intercept) };
  const axis = (which: 'x' | 'y') => ({ ...axes[which], ...(one.fromZero?.includes(which) && { fromZero: true }) });
  return graph({ id, x: axis('x'), y: axis('y'), points, plotted: true, line, triangle: triangle(one, points, line, axes), squares: SQUARES }, figures).svg;
}

/** A triangle over most of the line, between heavy lines of the paper, so that its run is a round number. */
function triangle({ fromZero }: Plotted, points: readonly { x: string }[], { slope }: { slope: number }, axes: GraphsInWords[string]) {
  const xs = points.map(({ x }) => Number(x));
  const axis = axisFor(xs, SQUARES[0], fromZero?.includes('x'));
  const [x1, x2] = [Math.ceil(along(axis, Math.min(...xs))), Math.floor(along(axis, Math.max(...xs)))].map((square) => valueAt(axis, square)) as [number, number];
  const legend = ({ quantity, unit }: { quantity: string; unit: string }, size: number) =>
    `Δ${/^\p{L}$/u.test(quantity) ? quantity : `(${quantity})`} = ${round(size, { figures: 3 }, 'even').replace('-', '−')}${unit === '' ? '' : ` ${unit}`}`;
  return { x1, x2, run: legend(axes.x, x2 - x1), rise: legend(axes.y, slope * (x2 - x1)) };
}
