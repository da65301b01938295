import type { GraphPoint, Plane } from './plot.ts';
import { element, mm, pen, type Point } from './svg.ts';

/**
 * A smooth curve through all points, from left to right: between two of them a cubic, whose direction at a point is that
 * of the parabola through it and its two neighbours. Nothing for fewer than three points, or two at one place.
 */
export function smoothCurve({ at }: Plane, points: readonly GraphPoint[]): string {
  const places = points.map(({ x, y }) => at(Number(x), Number(y))).toSorted(([a], [b]) => a - b);
  if (places.length < 3 || places.some(([x], i) => x === places[i - 1]?.[0])) return '';
  const slopes = directions(places);
  const arcs = places.slice(1).map(([x, y], i) => {
    const [fromX, fromY] = places[i]!;
    const third = (x - fromX) / 3;
    return `C${pair([fromX + third, fromY + third * slopes[i]!])} ${pair([x - third, y - third * slopes[i + 1]!])} ${pair([x, y])}`;
  });
  return element('path', { d: `M${pair(places[0]!)}${arcs.join('')}`, fill: 'none', stroke: '#000', 'stroke-width': pen.line, 'data-part': 'curve' });
}

const pair = ([x, y]: Point) => `${mm(x)} ${mm(y)}`;

/** Rise over run at each point. */
function directions(places: readonly Point[]): number[] {
  const chord = (i: number) => (places[i + 1]![1] - places[i]![1]) / (places[i + 1]![0] - places[i]![0]);
  const last = places.length - 1;
  return places.map((_, i) => {
    const middle = Math.min(Math.max(i, 1), last - 1);
    const [before, after] = [chord(middle - 1), chord(middle)];
    const [left, right] = [places[middle]![0] - places[middle - 1]![0], places[middle + 1]![0] - places[middle]![0]];
    const slope = (before * right + after * left) / (left + right);
    if (i === middle) return slope;
    return i === 0 ? 2 * before - slope : 2 * after - slope;
  });
}
