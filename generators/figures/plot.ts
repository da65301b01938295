import type { Written } from '../quantities/step.ts';
import { valueAt, type Axis } from './axis.ts';
import { size, symbols } from './lettering.ts';
import { lines, patch, pen, type Point } from './svg.ts';

export interface GraphPoint {
  x: Written;
  y: Written;
  /** Half the width and half the height of its uncertainty bars. */
  ux?: number;
  uy?: number;
}

/** Axes and where a pair of values stands on the paper. */
export interface Plane {
  x: Axis;
  y: Axis;
  at(x: number, y: number): Point;
}

/** y = slope · x + intercept, in the units of the axes. */
export interface StraightLine {
  slope: number;
  intercept: number;
}

/** The triangle from which the slope is read, between two places on the line. */
export interface Triangle {
  x1: number;
  x2: number;
  /** What is written at its sides: 'Δl = 40.0 cm', 'ΔX = 2.15 Ω'. */
  run: string;
  rise: string;
}

/** Points as slanting crosses, 2.4 mm across, so that they stand out from bars and grid. */
export function crosses({ at }: Plane, points: readonly GraphPoint[]): string {
  const strokes = points.flatMap((point) => {
    const [x, y] = at(Number(point.x), Number(point.y));
    return [[[x - 1.2, y - 1.2], [x + 1.2, y + 1.2]], [[x - 1.2, y + 1.2], [x + 1.2, y - 1.2]]] as Point[][];
  });
  return lines(strokes, pen.line, { 'data-part': 'points' });
}

/** Half a bar that is shorter than this, in mm, would be lost under its cross. */
const shortest = 0.6;

/** From x − u to x + u and from y − u to y + u, with short ends; none where the cross would hide it. */
export function uncertaintyBars({ at }: Plane, points: readonly GraphPoint[]): string {
  const strokes = points.flatMap((point) => {
    const [x, y, { ux = 0, uy = 0 }] = [Number(point.x), Number(point.y), point];
    return [...bar(at(x, y - uy), at(x, y + uy), [0.8, 0]), ...bar(at(x - ux, y), at(x + ux, y), [0, 0.8])];
  });
  return strokes.length === 0 ? '' : lines(strokes, pen.thin, { 'data-part': 'bars' });
}

/** A stroke from end to end, and at each a short one across it. */
function bar(from: Point, to: Point, [across, up]: Point): Point[][] {
  if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 2 * shortest) return [];
  const end = ([x, y]: Point): Point[] => [[x - across, y - up], [x + across, y + up]];
  return [[from, to], end(from), end(to)];
}

/** The line from the paper's left edge, where that is zero, or from just before the points, to just past them; never off the paper. */
export function lineAcross({ x, y, at }: Plane, { slope, intercept }: StraightLine, points: readonly GraphPoint[]): string {
  const half = (valueAt(x, 1) - valueAt(x, 0)) / 2;
  const across = points.map((point) => Number(point.x));
  const start = x.first === 0 ? 0 : Math.min(...across) - half;
  const crossings = slope === 0 ? [] : [0, y.squares].map((square) => (valueAt(y, square) - intercept) / slope).sort((a, b) => a - b);
  const from = Math.max(valueAt(x, 0), start, ...crossings.slice(0, 1));
  const to = Math.min(valueAt(x, x.squares), Math.max(...across) + half, ...crossings.slice(1));
  if (from >= to) return '';
  return lines([[at(from, slope * from + intercept), at(to, slope * to + intercept)]], pen.line, { 'data-part': 'line' });
}

/**
 * The run level with the lower end of a rising line, the upper end of a falling one. The rise has its name inside, nearer
 * to the corner, where the triangle is wide; the run outside, or inside where the paper ends below it.
 */
export function slopeTriangle({ at, y }: Plane, { slope, intercept }: StraightLine, { x1, x2, run, rise }: Triangle): string {
  const [start, end] = [at(x1, slope * x1 + intercept), at(x2, slope * x2 + intercept)];
  const corner: Point = [end[0], start[1]];
  const outside = { rising: corner[1] + 6 < at(x1, valueAt(y, 0))[1], falling: corner[1] - 6 > at(x1, valueAt(y, y.squares))[1] };
  const below = slope < 0 ? !outside.falling : outside.rising;
  const runAt: Point = [(start[0] + corner[0]) / 2, corner[1] + (below ? 4.8 : -1.8)];
  const within = (2 / 3) * (corner[0] - start[0]) > widthOf(rise) + 6;
  const riseAt: Point = [corner[0] + (within ? -2 : 2), corner[1] + (end[1] - corner[1]) / 3 + 1];
  return (
    lines([[start, corner, end]], pen.line, { 'stroke-dasharray': '2 1', 'data-part': 'triangle' }) +
    clear(runAt, run, 'middle') +
    clear(riseAt, rise, within ? 'end' : 'start')
  );
}

const widthOf = (text: string) => text.length * size.text * 0.5;

/** Lettering on a white ground, so that the grid does not run through it. */
function clear([x, y]: Point, text: string, anchor: 'start' | 'middle' | 'end'): string {
  const width = widthOf(text);
  const left = { start: x, middle: x - width / 2, end: x - width }[anchor];
  return patch(left - 0.8, y - 3, width + 1.6, 4.2) + symbols([x, y], text, { anchor });
}
