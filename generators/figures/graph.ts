import { along, axisFor, labelAt, type Axis } from './axis.ts';
import { crosses, lineAcross, slopeTriangle, uncertaintyBars, type GraphPoint, type StraightLine, type Triangle } from './plot.ts';
import { fill } from './fill.ts';
import { grid } from './graph-paper.ts';
import { quantityIn, size, words as letters } from './lettering.ts';
import { smoothCurve } from './smooth.ts';
import { figure, lines, pen, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords, GraphWords } from './words.ts';

/** What one axis carries. */
export interface AxisOf {
  /** As it is written: 'l', 'R', '1/R'; single letters are set sloping. */
  quantity: string;
  unit: string;
  fromZero?: boolean;
}

export interface Graph extends Frame {
  x: AxisOf;
  y: AxisOf;
  /** The scales are chosen for these points. */
  points: readonly GraphPoint[];
  /** Whether they are plotted; without, the axes stand ready for the student. */
  plotted: boolean;
  line?: StraightLine;
  /** A smooth curve through the points. */
  curve?: boolean;
  triangle?: Triangle;
  /** Squares of 10 mm across and up; 14 × 10 when left out. */
  squares?: readonly [across: number, up: number];
}

/** Left and below the grid: room for numbers and names. */
const margin = { left: 16, right: 4, top: 3, bottom: 14 };

/** A graph on millimetre paper with numbered axes; with 14 × 10 squares 160 × 117 mm. */
export function graph(drawn: Graph, words: FigureWords): Drawing {
  const [across, up] = drawn.squares ?? [14, 10];
  const { x, y } = axesOf(drawn, [across, up]);
  const at = (px: number, py: number): Point => [margin.left + 10 * along(x, px), margin.top + 10 * (up - along(y, py))];
  const plane = { x, y, at };
  const parts = [
    grid([margin.left, margin.top], across, up),
    ...axes(drawn, x, y),
    ...(drawn.line ? [lineAcross(plane, drawn.line, drawn.points)] : []),
    ...(drawn.curve ? [smoothCurve(plane, drawn.points)] : []),
    ...(drawn.line && drawn.triangle ? [slopeTriangle(plane, drawn.line, drawn.triangle)] : []),
    ...(drawn.plotted ? [uncertaintyBars(plane, drawn.points), crosses(plane, drawn.points)] : []),
  ];
  const seen = inWords(drawn, x, y, words.graph);
  return { svg: figure(drawn, margin.left + 10 * across + margin.right, margin.top + 10 * up + margin.bottom, seen, parts), seen };
}

/** The axes that hold all points with their bars, and where the x axis starts at zero also the line's crossing of the y axis, which is to be read there. */
export function axesOf({ points, x, y, line }: Pick<Graph, 'points' | 'x' | 'y' | 'line'>, [across, up]: readonly [number, number]): { x: Axis; y: Axis } {
  const reach = points.flatMap(({ y: middle, uy = 0 }) => [Number(middle) - uy, Number(middle) + uy]);
  const crossing = x.fromZero && line ? [line.intercept] : [];
  return {
    x: axisFor(points.map((point) => Number(point.x)), across, x.fromZero),
    y: axisFor([...reach, ...crossing], up, y.fromZero),
  };
}

function axes(drawn: Graph, x: Axis, y: Axis): string[] {
  const [left, bottom] = [margin.left, margin.top + 10 * y.squares];
  const right = left + 10 * x.squares;
  const squares = (axis: Axis) => Array.from({ length: axis.squares + 1 }, (_, i) => i);
  const spacing = labelAt(x, x.squares).length > 5 ? 2 : 1;
  return [
    lines([[[left, margin.top], [left, bottom], [right, bottom]]], pen.line),
    ...squares(x).filter((i) => i % spacing === 0).map((i) => letters([left + 10 * i, bottom + 4.4], labelAt(x, i), { size: size.small, part: 'x-number' })),
    ...squares(y).map((i) => letters([left - 1.4, bottom - 10 * i + 1], labelAt(y, i), { size: size.small, anchor: 'end', part: 'y-number' })),
    quantityIn([(left + right) / 2, bottom + 11], drawn.x.quantity, drawn.x.unit, { size: size.large }),
    quantityIn([4.4, (margin.top + bottom) / 2], drawn.y.quantity, drawn.y.unit, { size: size.large, turn: 90 }),
  ];
}

function inWords(drawn: Graph, x: Axis, y: Axis, words: GraphWords): string {
  const name = ({ quantity, unit }: AxisOf) => (unit === '' ? quantity : `${quantity} / ${unit}`);
  const values = {
    x: name(drawn.x),
    y: name(drawn.y),
    xFrom: labelAt(x, 0),
    xTo: labelAt(x, x.squares),
    yFrom: labelAt(y, 0),
    yTo: labelAt(y, y.squares),
    points: drawn.points.map((point) => `(${point.x}, ${point.y})`).join(', '),
  };
  const sentences = [words.axes, ...(drawn.plotted ? [words.points] : []), ...(drawn.line ? [words.line] : []), ...(drawn.curve ? [words.curve] : [])];
  return sentences.map((sentence) => fill(sentence, values)).join(' ');
}
