import { onWire, place } from './board.ts';
import { cell, dimension, galvanometer, key, resistor, terminal, type ResistorSymbol } from './electrical.ts';
import { size, symbols, words } from './lettering.ts';
import { lines, pen, solid, type Point } from './svg.ts';
import type { CircuitLetters } from './words.ts';

/** Where the jockey is drawn, in cm from the left end of the wire. */
export const tapAt = 42;

/** Something between the terminals of a gap, above the board, and below it its symbol if it has one. */
export function inGap(side: 'left' | 'right', put: (from: Point, to: Point) => string, symbol?: string): string[] {
  const [from, to] = place.gap[side];
  const above = [[from[0], 12], [to[0], 12]] as const;
  return [
    lines([[from, above[0]], [to, above[1]]], pen.line),
    put(...above),
    terminal(from),
    terminal(to),
    ...(symbol === undefined ? [] : [symbols([(from[0] + to[0]) / 2, 18.4], symbol, { size: size.large })]),
  ];
}

/** From the middle strip through the protective resistance and the galvanometer to the jockey. */
export function galvanometerBranch(symbol: ResistorSymbol, letters: CircuitLetters): string[] {
  return [
    lines([[place.centre, [60, 30]]], pen.line),
    resistor([60, 30], [60, 45], symbol),
    galvanometer([60, 45], [60, 54], letters.galvanometer),
    ...toJockey([60, 54], letters),
  ];
}

/** The lead from a place above the wire to the jockey, and the letters at both ends of the branch. */
export function toJockey([x, y]: Point, letters: CircuitLetters): string[] {
  const [tap, tip] = [onWire(tapAt), place.wire];
  return [
    lines([[[x, y], [x, 55], [tap, 55], [tap, tip - 2]]], pen.line),
    solid([[tap, tip], [tap - 0.9, tip - 2.6], [tap + 0.9, tip - 2.6]]),
    terminal(place.centre),
    words([63.2, 31.6], letters.centre, { anchor: 'start' }),
    words([tap + 2, tip - 1.8], letters.jockey, { anchor: 'start' }),
  ];
}

/** The letters at the ends of the wire. */
export function ends(letters: CircuitLetters): string[] {
  return [words([17.6, place.wire - 1.8], letters.start), words([102.4, place.wire - 1.8], letters.end)];
}

/** The lengths on both sides of the jockey. */
export function lengths(): string[] {
  const [left, middle, right] = [onWire(0), onWire(tapAt), onWire(100)];
  const y = place.lengths;
  return [
    lines([left, middle, right].map((x): Point[] => [[x, y - 2], [x, y + 1.5]]), pen.hair),
    dimension([left, y], [middle, y]),
    dimension([middle, y], [right, y]),
    symbols([(left + middle) / 2, y - 1], 'l'),
    symbols([(middle + right) / 2, y - 1], '100 cm − l'),
  ];
}

/** Cell and one-way key below the board, across the ends of the wire; `before` is what lies on the way to the cell. */
export function supply(before: (from: Point, to: Point) => string = (from, to) => lines([[from, to]], pen.line)): string[] {
  const { start, end, supply: y } = place;
  return [
    lines([[start, [3, start[1]], [3, y], [10, y]], [end, [117, end[1]], [117, y], [85, y]]], pen.line),
    before([10, y], [35, y]),
    cell([35, y], [52, y]),
    lines([[[52, y], [66, y]]], pen.line),
    key([66, y], [85, y]),
    terminal(start),
    terminal(end),
  ];
}
