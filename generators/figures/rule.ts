import { fill } from './fill.ts';
import { inOverview, opening, overview, overviewDepth } from './overview.ts';
import { inWindow, scaleWindow, windowAt, windowDepth, windowWidth, type Window } from './scale-window.ts';
import { standing } from './standing.ts';
import { box, figure, lines, patch, pen, tint, type Drawing, type Frame } from './svg.ts';
import type { FigureWords } from './words.ts';

export interface Rule extends Frame {
  /** Inner edges of the two terminals that hold the wire, in cm on the rule, left before right. */
  leftCm: number;
  rightCm: number;
}

/** From the top of a window down to the rule's edge: room for terminal and wire. */
const headroom = 8.5;
const gap = 7;
const upper = 0.2;
const small = upper + headroom + windowDepth + gap;
const smallEdge = small + 4.5;
const lower = smallEdge + overviewDepth + gap;

/** A wire stretched along a rule between two terminals: overview in the middle, the left end magnified above, the right end below. 94 × 69 mm. */
export function rule(drawn: Rule, words: FigureWords): Drawing {
  const { leftCm, rightCm } = drawn;
  if (leftCm >= rightCm) throw new RangeError(`the left terminal (${leftCm} cm) must stand before the right one (${rightCm} cm)`);
  const [left, right] = [windowAt(leftCm), windowAt(rightCm)];
  const seen = fill(words.rule, {
    leftFrom: left.from,
    leftTo: left.to,
    left: standing(10 * leftCm, 10, 1, words.standing),
    rightFrom: right.from,
    rightTo: right.to,
    right: standing(10 * rightCm, 10, 1, words.standing),
  });
  const parts = [
    ...magnifiedEnd(left, leftCm, upper, -1),
    overview(smallEdge, [left, right], small),
    ...tinyWire(leftCm, rightCm),
    opening(left, small, upper + headroom + windowDepth),
    opening(right, smallEdge + overviewDepth, lower - 0.4),
    ...magnifiedEnd(right, rightCm, lower, 1),
  ];
  return { svg: figure(drawn, windowWidth, lower + headroom + windowDepth + 0.4, seen, parts), seen };
}

function tinyWire(leftCm: number, rightCm: number): string[] {
  const [left, right] = [inOverview(leftCm), inOverview(rightCm)];
  const block = { fill: '#fff' };
  return [
    lines([[[left, small + 2.4], [right, small + 2.4]]], pen.line),
    box(left - 2.4, small + 0.6, 2.4, 3.6, block),
    box(right, small + 0.6, 2.4, 3.6, block),
  ];
}

/** One terminal with the wire going inwards from it; its inner edge is drawn down to the rule's edge. */
function magnifiedEnd(window: Window, cm: number, top: number, outwards: 1 | -1): string[] {
  const x = inWindow(window, cm);
  const part = outwards < 0 ? 'left' : 'right';
  const edge = top + headroom;
  const wire = top + 3.6;
  const outer = outwards < 0 ? Math.max(0.3, x - 14) : Math.min(windowWidth - 0.3, x + 14);
  return [
    scaleWindow(window, edge, part),
    lines([[[x, wire], [outwards < 0 ? windowWidth : 0, wire]]], pen.bold),
    patch(Math.min(x, outer), top + 0.4, Math.abs(outer - x), 6.4, tint.light),
    lines([[[x, top + 0.4], [outer, top + 0.4], [outer, top + 6.8], [x, top + 6.8]]], pen.thin, { 'data-part': `${part}-terminal` }),
    lines([[[x, top + 0.4], [x, edge]]], pen.thin, { 'data-part': `${part}-edge` }),
  ];
}
