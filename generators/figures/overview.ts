import { size, words } from './lettering.ts';
import { windowWidth, type Window } from './scale-window.ts';
import { box, lines, patch, pen, tint, type Point } from './svg.ts';

/** Where a place on the 100 cm stands in the overview, 0.84 mm for every cm. */
export function inOverview(cm: number): number {
  return 5 + 0.84 * cm;
}

/** From the overview's edge down to its lower border. */
export const overviewDepth = 6.6;

/** The whole scale, too small to be read: a mark every 5 cm, a number every 10 cm, and the pieces tinted that are shown larger. */
export function overview(edge: number, magnified: readonly Window[], tintFrom = edge): string {
  const marks = Array.from({ length: 21 }, (_, i): Point[] => [[inOverview(5 * i), edge], [inOverview(5 * i), edge + (i % 2 === 0 ? 2.2 : 1.4)]]);
  const numbers = Array.from({ length: 11 }, (_, i) => words([inOverview(10 * i), edge + 5.6], String(10 * i), { size: size.small }));
  const tinted = magnified.map(({ from, to }) => patch(inOverview(from), tintFrom, inOverview(to) - inOverview(from), edge + overviewDepth - tintFrom, tint.light));
  const outline = box(0.2, edge, windowWidth - 0.4, overviewDepth, { fill: 'none', 'stroke-width': pen.hair });
  return [...tinted, outline, lines(marks, pen.hair), ...numbers].join('');
}

/** Lines that open from a piece of the overview, at height `from`, to the ends of its window, at height `to`. */
export function opening(window: Window, from: number, to: number): string {
  const ends: Point[][] = [[[inOverview(window.from), from], [0.8, to]], [[inOverview(window.to), from], [windowWidth - 0.8, to]]];
  return lines(ends, pen.hair, { 'stroke-dasharray': '1 0.8' });
}
