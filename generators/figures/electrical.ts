import { centred, words } from './lettering.ts';
import { circle, lines, pen, shape, solid, type Point } from './svg.ts';

/** The resistor: the rectangle of IEC 60617 or the zig-zag of many school books. */
export type ResistorSymbol = 'rectangle' | 'zigzag';

const bodyLength = 12;
const bodyHalf = 2;

/** A resistor in the middle of the way from one point to the other, with its leads. */
export function resistor(from: Point, to: Point, symbol: ResistorSymbol): string {
  const way = along(from, to);
  const start = (way.length - bodyLength) / 2;
  const end = start + bodyLength;
  if (symbol === 'rectangle') {
    const corners = [way.at(start, bodyHalf), way.at(end, bodyHalf), way.at(end, -bodyHalf), way.at(start, -bodyHalf)];
    return lines([[from, way.at(start)], [way.at(end), to]], pen.line) + shape(corners, { 'stroke-width': pen.line });
  }
  const teeth = [0, 1, 2, 3, 4, 5].map((i) => way.at(start + (bodyLength * (i + 0.5)) / 6, i % 2 === 0 ? bodyHalf : -bodyHalf));
  return lines([[from, way.at(start), ...teeth, way.at(end), to]], pen.line);
}

/** A resistor that can be set: its symbol with an arrow across it. */
export function rheostat(from: Point, to: Point, symbol: ResistorSymbol): string {
  const way = along(from, to);
  const [tail, tip] = [way.at(way.length / 2 - 4, 4.2), way.at(way.length / 2 + 4, -4.2)];
  const arrow = along(tail, tip);
  return resistor(from, to, symbol) + lines([[tail, tip]], pen.thin) + solid([tip, arrow.at(arrow.length - 2.2, 0.6), arrow.at(arrow.length - 2.2, -0.6)]);
}

/** A galvanometer: a ring with its letter, and its leads. */
export function galvanometer(from: Point, to: Point, letter: string): string {
  const radius = 3.8;
  const way = along(from, to);
  const middle = way.at(way.length / 2);
  return (
    lines([[from, way.at(way.length / 2 - radius)], [way.at(way.length / 2 + radius), to]], pen.line) +
    circle(middle, radius) +
    words(centred(middle, 4), letter, { size: 4 })
  );
}

/** A cell, the positive (long, thin) plate towards `from`. */
export function cell(from: Point, to: Point): string {
  const way = along(from, to);
  const [positive, negative] = [way.length / 2 - 0.9, way.length / 2 + 0.9];
  return (
    lines([[from, way.at(positive)], [way.at(positive, 3.4), way.at(positive, -3.4)], [way.at(negative), to]], pen.line) +
    lines([[way.at(negative, 1.7), way.at(negative, -1.7)]], 0.9)
  );
}

/** A one-way key, drawn open. */
export function key(from: Point, to: Point): string {
  const way = along(from, to);
  const [hinge, contact] = [way.length / 2 - 4, way.length / 2 + 4];
  return (
    lines([[from, way.at(hinge)], [way.at(hinge), way.at(contact - 0.8, -3)], [way.at(contact), to]], pen.line) +
    [hinge, contact].map((place) => circle(way.at(place), 0.7)).join('')
  );
}

/** A binding screw or a joint of the circuit. */
export function terminal(at: Point): string {
  return circle(at, 0.9, { fill: '#fff' });
}

/** A dimension line with a head at either end. */
export function dimension(from: Point, to: Point): string {
  const way = along(from, to);
  const head = (tip: number, back: number) =>
    solid([way.at(tip), way.at(tip + back, 0.6), way.at(tip + back, -0.6)]);
  return lines([[from, to]], pen.thin) + head(0, 2.2) + head(way.length, -2.2);
}

/** Places on the straight way between two points: so far along, so far to its right. */
function along([x1, y1]: Point, [x2, y2]: Point) {
  const length = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  return { length, at: (far: number, aside = 0): Point => [x1 + far * ux - aside * uy, y1 + far * uy + aside * ux] };
}
