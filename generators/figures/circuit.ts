import { bridgeBoard, onWire, place } from './board.ts';
import { ends, galvanometerBranch, inGap, lengths, supply, tapAt } from './bridge-parts.ts';
import { cell, galvanometer, key, resistor, terminal, type ResistorSymbol } from './electrical.ts';
import { fill } from './fill.ts';
import { size, symbols, words } from './lettering.ts';
import { figure, lines, pen, type Frame } from './svg.ts';
import type { CircuitLetters, CircuitWords, FigureWords } from './words.ts';

export type { CircuitWords };

export interface Circuit extends Frame {
  /** The gap that holds the resistance box. */
  known: 'left' | 'right';
  symbol: ResistorSymbol;
  /** Symbols in the gaps, 'R' and 'X' when left out. */
  knownSymbol?: string;
  unknownSymbol?: string;
}

export interface BridgeCircuit extends Circuit {
  /** Parts named in words; letters alone when false, for a student to name them. */
  named: boolean;
}

const diamond = { start: [14, 30], end: [76, 30], centre: [45, 5.5], jockey: [45, 54.5] } as const;

/** The metre bridge as it is wired: 120 × 98 mm. */
export function bridgeCircuit(circuit: BridgeCircuit, { circuit: spoken }: Pick<FigureWords, 'circuit'>): string {
  const { letters, names } = spoken;
  const parts = [
    bridgeBoard(),
    ...gaps(circuit),
    ...galvanometerBranch(circuit.symbol, letters),
    ...lengths(),
    ...supply(),
    ...ends(letters),
    ...(circuit.named ? nameParts(circuit, names) : []),
  ];
  return figure(circuit, 120, 98, alternative(spoken.bridge, circuit, letters), parts);
}

/** The same circuit as four arms of a Wheatstone bridge: 90 × 72 mm. */
export function fourArmCircuit(circuit: Circuit, { circuit: spoken }: Pick<FigureWords, 'circuit'>): string {
  const { letters } = spoken;
  const { start, end, centre, jockey } = diamond;
  const [left, right] = inGaps(circuit);
  const parts = [
    resistor(start, centre, circuit.symbol),
    resistor(centre, end, circuit.symbol),
    resistor(start, jockey, circuit.symbol),
    resistor(jockey, end, circuit.symbol),
    galvanometer(centre, jockey, letters.galvanometer),
    lines([[start, [6, 30], [6, 66], [28, 66]], [[62, 66], [84, 66], [84, 30], end]], pen.line),
    cell([28, 66], [45, 66]),
    key([45, 66], [62, 66]),
    ...[start, end, centre, jockey].map(terminal),
    symbols([25, 15.5], left, { anchor: 'end', size: size.large }),
    symbols([65, 15.5], right, { anchor: 'start', size: size.large }),
    symbols([26.5, 47.5], 'l', { anchor: 'end', size: size.large }),
    symbols([63.5, 47.5], '100 cm − l', { anchor: 'start', size: size.large }),
    words([11.5, 28], letters.start),
    words([78.5, 28], letters.end),
    words([49, 5.5], letters.centre),
    words([49, 57.5], letters.jockey),
  ];
  return figure(circuit, 90, 72, alternative(spoken.fourArms, circuit, letters), parts);
}

function inGaps({ known, knownSymbol = 'R', unknownSymbol = 'X' }: Circuit): [left: string, right: string] {
  return known === 'left' ? [knownSymbol, unknownSymbol] : [unknownSymbol, knownSymbol];
}

function alternative(sentence: string, circuit: Circuit, letters: CircuitLetters): string {
  const [left, right] = inGaps(circuit);
  return fill(sentence, { left, right, ...letters });
}

function gaps(circuit: Circuit): string[] {
  const [left, right] = inGaps(circuit);
  return [
    ...inGap('left', (from, to) => resistor(from, to, circuit.symbol), left),
    ...inGap('right', (from, to) => resistor(from, to, circuit.symbol), right),
  ];
}

function nameParts({ known }: Circuit, names: CircuitWords['names']): string[] {
  const [left, right] = known === 'left' ? [names.known, names.unknown] : [names.unknown, names.known];
  const small = { size: size.small };
  const beside = { ...small, anchor: 'start' as const };
  return [
    words([39, 6.5], left, small),
    words([81, 6.5], right, small),
    words([17, 34], names.strip, beside),
    words([64, 38.6], names.protective, beside),
    words([65.5, 50.5], names.galvanometer, beside),
    words([onWire(tapAt) - 2, place.wire - 3.5], names.jockey, { ...small, anchor: 'end' }),
    words([43.5, place.supply - 4.6], names.cell, small),
    words([75.5, place.supply - 4.6], names.key, small),
  ];
}
