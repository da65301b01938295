import { fill } from './fill.ts';
import { inOverview, opening, overview, overviewDepth } from './overview.ts';
import { inWindow, scaleWindow, windowAt, windowDepth, windowWidth } from './scale-window.ts';
import { standing } from './standing.ts';
import { figure, lines, pen, shape, tint, type Drawing, type Frame } from './svg.ts';
import type { FigureWords } from './words.ts';

export interface MetreScale extends Frame {
  /** Where the jockey's edge stands, in cm from the left end; it may stand between two marks. */
  pointerCm: number;
}

const small = { wire: 6, edge: 7 };
const large = { top: 21, wire: 29, edge: 31 };

/** The jockey on the bridge wire over its scale: an overview and a window to be read to 1 mm. 94 × 45 mm. */
export function metreScale(scale: MetreScale, words: FigureWords): Drawing {
  const { pointerCm } = scale;
  const window = windowAt(pointerCm);
  const seen = fill(words.metreScale, { ...window, where: standing(10 * pointerCm, 10, 1, words.standing) });
  const parts = [
    overview(small.edge, [window]),
    lines([[[inOverview(0), small.wire], [inOverview(100), small.wire]]], pen.line),
    tinyJockey(inOverview(pointerCm)),
    opening(window, small.edge + overviewDepth, large.wire),
    scaleWindow(window, large.edge, 'scale'),
    lines([[[0.6, large.wire], [windowWidth - 0.6, large.wire]]], pen.bold),
    jockey(inWindow(window, pointerCm)),
  ];
  return { svg: figure(scale, windowWidth, large.edge + windowDepth + 1, seen, parts), seen };
}

function tinyJockey(x: number): string {
  return shape([[x, small.wire], [x - 1.1, small.wire - 2.8], [x - 1.1, small.wire - 4.8], [x + 1.1, small.wire - 4.8], [x + 1.1, small.wire - 2.8]], {
    fill: tint.light,
  });
}

/** Its knife edge is a line 0.2 mm wide, from the body over the wire to the edge of the scale. */
function jockey(x: number): string {
  const { top, wire, edge } = large;
  return (
    shape([[x - 2.2, top], [x + 2.2, top], [x + 2.2, top + 3], [x, wire - 2.2], [x - 2.2, top + 3]], { fill: tint.light }) +
    lines([[[x, wire - 2.4], [x, edge]]], pen.thin, { 'data-part': 'pointer' })
  );
}
