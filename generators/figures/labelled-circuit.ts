import { type Arm, arm } from './arms.ts';
import { cell, dimension, galvanometer, terminal, type ResistorSymbol } from './electrical.ts';
import { fill } from './fill.ts';
import { size, symbols } from './lettering.ts';
import { figure, lines, pen, solid, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords, LabelledWords } from './words.ts';

interface Labelled extends Frame {
  symbol: ResistorSymbol;
  /** What stands at the cell; nothing where its electromotive force does not matter. */
  cell?: string;
}

export interface LabelledBridge extends Labelled {
  /** The gaps from left to right: two, or the four of a Carey Foster bridge. */
  gaps: readonly Arm[];
  /** What stands at the length from the left end of the wire to the jockey. */
  length: string;
  /** What stands beside the galvanometer. */
  galvanometer?: string;
}

const ends = { left: 12, right: 108, wire: 28, cell: 48 };
const tap = 48;

/** A metre bridge as a circuit, its parts labelled with symbols or values; 120 mm wide, and 71 to 84 mm high. */
export function labelledBridge(view: LabelledBridge, { circuit: { letters, labelled } }: FigureWords): Drawing {
  const { gaps, symbol } = view;
  const isTall = gaps.length > 2 || gaps.some(({ join }) => join === 'parallel');
  const y = isTall ? 28 : 13;
  const { left, right } = ends;
  const wire = y + ends.wire;
  const node = (i: number): Point => [left + ((right - left) * i) / gaps.length, y];
  const middle = node(gaps.length / 2);
  const seen = [fill(gaps.length === 2 ? labelled.bridge : labelled.fourGaps, { gaps: gaps.map((gap) => inWords(gap, labelled)).join('; '), length: view.length }), ...marked(view, labelled)].join(' ');
  const parts = [
    ...gaps.flatMap((gap, i) => arm(node(i), node(i + 1), gap, -1, symbol)),
    lines([[node(0), [left, wire]], [node(gaps.length), [right, wire]]], pen.line),
    lines([[[left, wire], [right, wire]]], pen.bold, { 'data-part': 'wire' }),
    galvanometer(middle, [middle[0], wire - 9], letters.galvanometer),
    lines([[[middle[0], wire - 9], [tap, wire - 9], [tap, wire - 2]]], pen.line),
    solid([[tap, wire], [tap - 0.9, wire - 2.6], [tap + 0.9, wire - 2.6]]),
    ...(view.galvanometer ? [symbols([middle[0] + 6, (y + wire - 9) / 2 + 1], view.galvanometer, { anchor: 'start' })] : []),
    lines([left, tap].map((x): Point[] => [[x, wire + 2], [x, wire + 7]]), pen.hair),
    dimension([left, wire + 5], [tap, wire + 5]),
    symbols([(left + tap) / 2, wire + 10], view.length),
    ...(gaps.length === 2 ? supply([left, wire], [right, wire], y + ends.cell, [4, 116], view.cell) : supply(node(1), node(3), y - 20, [node(1)[0], node(3)[0]], view.cell)),
    ...[node(0), node(gaps.length), middle].map(terminal),
  ];
  return { svg: figure(view, 120, gaps.length === 2 ? y + ends.cell + 5 : wire + 13, seen, parts), seen };
}

/** The cell at a height of its own between two places, by a way out to the left and to the right. */
function supply([x1, y1]: Point, [x2, y2]: Point, y: number, [from, to]: readonly [number, number], label: string | undefined): string[] {
  const name = label === undefined ? [] : [symbols([60, y - 5], label)];
  return [lines([[[x1, y1], [from, y1], [from, y], [50, y]], [[70, y], [to, y], [to, y2], [x2, y2]]], pen.line), cell([50, y], [70, y]), terminal([x1, y1]), terminal([x2, y2]), ...name];
}

export interface LabelledDiamond extends Labelled {
  /** Upper branch from the left, then the lower one. */
  arms: readonly [Arm, Arm, Arm, Arm];
}

/** A Wheatstone bridge as a diamond, its arms labelled; 110 × 92 mm. */
export function labelledDiamond(view: LabelledDiamond, { circuit: { letters, labelled } }: FigureWords): Drawing {
  const [start, end, top, bottom]: [Point, Point, Point, Point] = [[18, 38], [92, 38], [55, 8], [55, 68]];
  const [P, Q, R, S] = view.arms;
  const seen = [fill(labelled.diamond, { upper: [P, Q].map((one) => inWords(one, labelled)).join('; '), lower: [R, S].map((one) => inWords(one, labelled)).join('; ') }), ...marked(view, labelled)].join(' ');
  const parts = [
    ...arm(start, top, P, -1, view.symbol),
    ...arm(top, end, Q, -1, view.symbol),
    ...arm(start, bottom, R, 1, view.symbol),
    ...arm(bottom, end, S, 1, view.symbol),
    galvanometer(top, bottom, letters.galvanometer),
    lines([[start, [6, 38], [6, 84], [46, 84]], [[64, 84], [104, 84], [104, 38], end]], pen.line),
    cell([46, 84], [64, 84]),
    ...[start, end, top, bottom].map(terminal),
    ...(view.cell ? [symbols([55, 79], view.cell, { size: size.text })] : []),
  ];
  return { svg: figure(view, 110, 90, seen, parts), seen };
}

/** What is written at the cell and at the galvanometer, in words. */
function marked({ cell: atCell, galvanometer: atMeter }: { cell?: string; galvanometer?: string }, words: LabelledWords): string[] {
  return [...(atCell ? [fill(words.cell, { cell: atCell })] : []), ...(atMeter ? [fill(words.galvanometer, { galvanometer: atMeter })] : [])];
}

/** An arm in words: 'P = 12 Ω', 'X in parallel with S = 20 Ω'. */
function inWords({ join, labels }: Arm, words: LabelledWords): string {
  const [first = '', second = ''] = labels;
  return fill(words[join], { first, second });
}
