import { bridgeBoard, onWire, place, type Strips } from './board.ts';
import { ends, galvanometerBranch, lengths, tapAt } from './bridge-parts.ts';
import { cell, key, resistor, terminal, type ResistorSymbol } from './electrical.ts';
import { fill } from './fill.ts';
import { size, symbols, words } from './lettering.ts';
import { figure, lines, pen, type Frame, type Point } from './svg.ts';
import type { CircuitWords, FigureWords } from './words.ts';

export interface CareyFosterCircuit extends Frame {
  symbol: ResistorSymbol;
  /** Parts named in words; letters alone when false, for a student to name them. */
  named: boolean;
}

const strips: Strips = { arms: [20, 100], between: [[32, 40], [52, 68], [80, 88]] };
const gaps = [
  { symbol: 'X', from: 17.5, to: 33.5 },
  { symbol: 'P', from: 38.5, to: 54.5 },
  { symbol: 'Q', from: 65.5, to: 81.5 },
  { symbol: 'Y', from: 86.5, to: 102.5 },
] as const;
const cellAt = { left: 36, right: 84, height: 5 };
const terminals = 25.5;

/** The Carey Foster bridge as it is wired, with four gaps and the cell between the inner and the outer ones: 120 × 86 mm. */
export function careyFosterCircuit(circuit: CareyFosterCircuit, { circuit: spoken }: Pick<FigureWords, 'circuit'>): string {
  const { letters } = spoken;
  const parts = [
    bridgeBoard(strips),
    ...gaps.flatMap((gap) => filled(gap, circuit.symbol)),
    ...galvanometerBranch(circuit.symbol, letters),
    ...lengths(),
    ...overhead(),
    ...ends(letters),
    ...(circuit.named ? nameParts(spoken.names) : []),
  ];
  return figure(circuit, 120, 86, fill(spoken.careyFoster, { ...letters }), parts);
}

function filled({ symbol, from, to }: (typeof gaps)[number], drawn: ResistorSymbol): string[] {
  const y = 13;
  return [
    lines([[[from, terminals], [from, y]], [[to, terminals], [to, y]]], pen.line),
    resistor([from, y], [to, y], drawn),
    terminal([from, terminals]),
    terminal([to, terminals]),
    symbols([(from + to) / 2, 19], symbol, { size: size.large }),
  ];
}

/** Cell and key above the board, between the two strips that part an outer gap from an inner one. */
function overhead(): string[] {
  const { left, right, height: y } = cellAt;
  const down = (x: number): Point => [x, terminals];
  return [
    lines([[down(left), [left, y], [44, y]], [[58, y], [62, y]], [[76, y], [right, y], down(right)]], pen.line),
    cell([44, y], [58, y]),
    key([62, y], [76, y]),
    terminal(down(left)),
    terminal(down(right)),
  ];
}

function nameParts(names: CircuitWords['names']): string[] {
  const small = { size: size.small };
  const beside = { ...small, anchor: 'start' as const };
  return [
    words([17, 34], names.strip, beside),
    words([64, 38.6], names.protective, beside),
    words([65.5, 50.5], names.galvanometer, beside),
    words([onWire(tapAt) - 2, place.wire - 3.5], names.jockey, { ...small, anchor: 'end' }),
    words([cellAt.left - 2, cellAt.height + 1], names.cell, { ...small, anchor: 'end' }),
    words([cellAt.right + 2, cellAt.height + 1], names.key, beside),
  ];
}
