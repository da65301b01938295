import { bridgeBoard, onWire, place } from './board.ts';
import { ends, inGap, lengths, supply, tapAt, toJockey } from './bridge-parts.ts';
import { galvanometer, key, resistor, rheostat } from './electrical.ts';
import type { BridgeCircuit } from './circuit.ts';
import { fill } from './fill.ts';
import { size, words } from './lettering.ts';
import { figure, lines, pen, type Point } from './svg.ts';
import type { CircuitWords, FigureWords } from './words.ts';

/** The bridge with the galvanometer in a gap and a key in the branch to the jockey: 120 × 98 mm. */
export function kelvinCircuit(circuit: Omit<BridgeCircuit, 'knownSymbol' | 'unknownSymbol'>, { circuit: spoken }: Pick<FigureWords, 'circuit'>): string {
  const { letters, names } = spoken;
  const { known, symbol, named } = circuit;
  const other = known === 'left' ? 'right' : 'left';
  const parts = [
    bridgeBoard(),
    ...inGap(known, (from, to) => resistor(from, to, symbol), 'R'),
    ...inGap(other, (from, to) => galvanometer(from, to, letters.galvanometer)),
    ...tappingBranch(spoken),
    ...lengths(),
    ...supply((from, to) => rheostat(from, to, symbol)),
    ...ends(letters),
    ...(named ? nameParts(known, names) : []),
  ];
  return figure(circuit, 120, 98, fill(spoken.kelvin, { known: spoken.sides[known], other: spoken.sides[other], ...letters }), parts);
}

function tappingBranch({ letters }: CircuitWords): string[] {
  const down = (y: number): Point => [60, y];
  return [lines([[place.centre, down(34)], [down(48), down(54)]], pen.line), key(down(34), down(48)), ...toJockey(down(54), letters)];
}

function nameParts(known: 'left' | 'right', names: CircuitWords['names']): string[] {
  const small = { size: size.small };
  const beside = { ...small, anchor: 'start' as const };
  const [box, meter] = known === 'left' ? [39, 81] : [81, 39];
  return [
    words([box, 6.5], names.known, small),
    words([meter, 6.5], names.galvanometer, small),
    words([17, 34], names.strip, beside),
    words([66, 42], names.tapKey, beside),
    words([onWire(tapAt) - 2, place.wire - 3.5], names.jockey, { ...small, anchor: 'end' }),
    words([16, place.supply - 4.6], names.rheostat, small),
    words([43.5, place.supply - 4.6], names.cell, small),
    words([75.5, place.supply - 4.6], names.key, small),
  ];
}
