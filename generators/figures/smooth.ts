import type { GraphPoint, Plane } from './plot.ts';
import { element, mm, pen, type Point } from './svg.ts';

/**
 * A smooth curve through all points, from left to right, that rises and falls only where they do: cubics whose direction at a
 * point is a harmonic mean of the chords beside it (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984, from memory).
 * Nothing for fewer than three points, or two at one place.
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
  const widths = places.slice(1).map(([x], i) => x - places[i]![0]);
  const chords = places.slice(1).map(([, y], i) => (y - places[i]![1]) / widths[i]!);
  return places.map((_, i) => {
    const [before, after] = [chords[i - 1], chords[i]];
    if (before === undefined || after === undefined) return before ?? after!;
    if (before * after <= 0) return 0;
    const [left, right] = [widths[i - 1]!, widths[i]!];
    return (3 * (left + right)) / ((2 * right + left) / before + (right + 2 * left) / after);
  });
}
