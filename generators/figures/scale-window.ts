import { size, words } from './lettering.ts';
import { lines, pen, type Point } from './svg.ts';

/** A piece of a scale, from and to whole centimetres. */
export interface Window {
  from: number;
  to: number;
}

/** Centimetres in a window, and how large one is drawn: 1.7 mm for every millimetre of the scale. */
const span = 5;
const perCm = 17;
/** Left end of a window's first numbered mark. */
const left = 4.5;

/** Total width of a window in mm. */
export const windowWidth = 2 * left + span * perCm;

/** From the scale's edge down to its lower border. */
export const windowDepth = 13;

/** The window that shows a place on a scale of 100 cm; RangeError off the scale. */
export function windowAt(cm: number): Window {
  if (!(cm >= 0 && cm <= 100)) throw new RangeError(`${cm} cm is not on a scale of 100 cm`);
  const from = Math.max(0, Math.min(100 - span, Math.floor(cm) - 2));
  return { from, to: from + span };
}

/** Where a place on the scale stands in the drawn window. */
export function inWindow({ from }: Window, cm: number): number {
  return left + perCm * (cm - from);
}

/** Millimetre marks hanging from the scale's edge at height `edge`, every centimetre numbered; the piece is torn off at both ends. */
export function scaleWindow(window: Window, edge: number, part: string): string {
  const { from, to } = window;
  const numbered = Array.from({ length: span + 1 }, (_, i) => from + i);
  const beyond = [10 * from - 1, ...Array.from({ length: 10 * span + 1 }, (_, i) => 10 * from + i), 10 * to + 1];
  const marks = beyond
    .filter((mark) => mark >= 0 && mark <= 1000)
    .map((mark): Point[] => {
      const x = inWindow(window, mark / 10);
      return [[x, edge], [x, edge + (mark % 10 === 0 ? 7 : mark % 5 === 0 ? 5.4 : 3.8)]];
    });
  return [
    lines([[[0, edge], [windowWidth, edge]], [[0, edge + windowDepth], [windowWidth, edge + windowDepth]]], pen.thin),
    tornEnds(edge),
    lines(marks, 0.16, { 'data-part': part }),
    ...numbered.map((cm) => words([inWindow(window, cm), edge + 11.2], String(cm), { size: size.text, part: `${part}-number` })),
    words([inWindow(window, to - 0.5), edge + 11.2], 'cm', { size: size.small }),
  ].join('');
}

function tornEnds(edge: number): string {
  const tear = (x: number): Point[] => [0, 1, 2, 3, 4].map((i) => [x + (i % 2 === 0 ? 0 : i === 1 ? 0.5 : -0.5), edge + (i * windowDepth) / 4]);
  return lines([tear(0.8), tear(windowWidth - 0.8)], pen.hair);
}
