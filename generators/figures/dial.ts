import { fill } from './fill.ts';
import { centred, size, words as letters } from './lettering.ts';
import { standing } from './standing.ts';
import { box, circle, element, figure, lines, pen, tint, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords } from './words.ts';

export interface Dial extends Frame {
  /** In divisions, to the right positive; beyond the scale the needle lies against its stop. */
  deflection: number;
}

/** Divisions on each side of the zero (common practice, no source). */
const divisions = 30;
const stop = 32;
const pivot: Point = [43, 55];
const radius = 40;

/** A centre-zero galvanometer, 30–0–30; 86 × 56 mm, 1.26 mm a division. */
export function dial(view: Dial, words: FigureWords): Drawing {
  const needle = Math.max(-stop, Math.min(stop, view.deflection));
  const seen = inWords(view.deflection, words);
  const marks = Array.from({ length: 2 * divisions + 1 }, (_, i) => i - divisions);
  const parts = [
    box(0.3, 0.3, 85.4, 55.4, { rx: 3, 'stroke-width': pen.line }),
    lines([marks.map((mark) => at(mark, radius))], pen.thin),
    lines(marks.map((mark) => [at(mark, radius), at(mark, radius + (mark % 10 === 0 ? 4 : mark % 5 === 0 ? 3 : 2))]), pen.thin, { 'data-part': 'marks' }),
    ...marks.filter((mark) => mark % 10 === 0).map((mark) => letters(centred(at(mark, radius + 6.6)), String(Math.abs(mark)), { part: 'number' })),
    ...[-stop - 0.6, stop + 0.6].map((mark) => circle(at(mark, radius - 4), 0.5, { fill: '#000' })),
    lines([[at(needle, 9), at(needle, radius - 12)]], pen.bold),
    lines([[at(needle, radius - 12), at(needle, radius - 0.3)]], pen.thin, { 'data-part': 'needle' }),
    letters([12, 50], 'G', { size: size.large }),
    cover(),
  ];
  return { svg: figure(view, 86, 56, seen, parts), seen };
}

/** 1.8° a division, clockwise from upright. */
function at(mark: number, r: number): Point {
  const angle = (1.8 * mark * Math.PI) / 180;
  return [pivot[0] + r * Math.sin(angle), pivot[1] - r * Math.cos(angle)];
}

function cover(): string {
  const [x, y] = pivot;
  const half = `M${x - 9} ${y + 0.7}V${y}A9 9 0 0 1 ${x + 9} ${y}V${y + 0.7}Z`;
  return (
    element('path', { d: half, fill: tint.pale, stroke: '#000', 'stroke-width': pen.thin }) +
    circle([x, y - 4], 2, { 'stroke-width': pen.thin }) +
    lines([[[x - 1.1, y - 5.1], [x + 1.1, y - 2.9]]], pen.line)
  );
}

function inWords(deflection: number, { dial: words, standing: places }: FigureWords): string {
  const side = deflection < 0 ? words.left : words.right;
  const size = Math.abs(deflection);
  if (size > divisions) return fill(words.seen, { where: fill(words.stop, { side }) });
  if (size < 0.05) return fill(words.seen, { where: words.zero });
  return fill(words.seen, { where: fill(words.side, { side, where: standing(size, 10, 10, places) }) });
}
