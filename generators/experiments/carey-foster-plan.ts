import type { Bench, Range } from '../apparatus/bench.ts';
import { boxValues } from '../apparatus/box.ts';
import { round } from '../quantities/written.ts';
import type { Ask, NominalWire } from './ask.ts';
import { type Setting, nominalResistance } from './bridge-plan.ts';
import type { Balance, Plan } from './plan.ts';

/** Shortest shift of the null point, in cm, that is worth reading; common practice, no source. */
const SHORTEST_SHIFT = 5;
const SHORTEST_SHIFT_OF_R = 15;
/** How many times larger or smaller than X the ratio arms may be for a bridge that is still sharp; common practice, no source. */
const ARMS = 3;

/** Settings that bring both null points inside the window with a strip opposite, on a wire of so many ohms a cm; l with R on the left. */
export function stripSettings({ bench, window }: Ask, ohmsPerCm: number): Setting[] {
  const shiftAt = (R: string) => Number(R) / ohmsPerCm;
  return boxValues(bench.box.plugs)
    .filter((R) => shiftAt(R) >= SHORTEST_SHIFT_OF_R && shiftAt(R) <= longestShift(window))
    .map((R) => ({ R, l: 50 - shiftAt(R) / 2 }));
}

/** Equal ratio arms that suit X, ascending; l with X on the left, on a wire of so many ohms a cm. */
export function armSettings({ bench, wire, others }: Ask, ohmsPerCm: number): Setting[] {
  const X = nominalResistance(wire);
  const l = 50 + (nominalResistance(others[0] ?? wire) - X) / (2 * ohmsPerCm);
  return boxValues(bench.box.plugs)
    .filter((P) => Number(P) >= X / ARMS && Number(P) <= X * ARMS)
    .map((R) => ({ R, l }));
}

/** Both null points lie as far from the middle, so that the nearer end of the window decides. */
const longestShift = ([low, high]: Ask['window']) => 2 * Math.min(50 - low, high - 50);

/** What is the same for all bridges of a bench. */
export const middle = ([low, high]: Range) => (low + high) / 2;

export function planCareyFoster(ask: Ask): Plan {
  const { bench, rows, wire } = ask;
  const { wireResistance } = bench.bridge;
  const ends = wireResistance[0] === wireResistance[1] ? [''] : [' at its thickest', ' at its thinnest'];
  const strip = ends.map((end, i): Balance => ({ of: `the bridge wire${end}`, X: 100 * wireResistance[i]!, usable: stripSettings(ask, wireResistance[i]!), wanted: rows }));
  const arms = { of: 'X (P and Q both set to R)', X: nominalResistance(wire), usable: armSettings(ask, middle(wireResistance)), wanted: rows };
  return { balances: [arms, ...strip], unfit: unfitPair(ask) };
}

const three = (value: number) => round(value, { figures: 3 }, 'even');

/** The difference must be less than the bridge wire has between the ends of the window, and more than can be lost in reading it. */
function unfitPair({ wire, others: [other], bench, window }: Ask): string[] {
  if (!other) return [];
  const [least, most] = bench.bridge.wireResistance;
  const [X, Y] = [nominalResistance(wire), nominalResistance(other)];
  const apart = Math.abs(Y - X);
  const largest = longestShift(window) * least - piecesDiffer(bench) * (X + Y);
  const smallest = SHORTEST_SHIFT * most;
  if (apart <= largest && apart >= smallest) return [];
  const why =
    apart > largest
      ? `the null point stays between ${window[0]} and ${window[1]} cm only for a difference that is below the resistance of that part of the bridge wire, here ${ohms(longestShift(window) * least)} at least, with room for how far real pieces lie from the tables`
      : `that is less than ${SHORTEST_SHIFT} cm of a bridge wire of ${ohms(100 * most)}, too little to be read well`;
  return [`they are about ${ohms(X)} and ${ohms(Y)} and differ by ${ohms(apart)}; ${why}. ${whatWouldDo(wire, other, smallest, largest)}`];
}

/** How far a real piece may lie from its tables, as a fraction: two standard deviations of its batch, and the limit of its diameter, which enters squared. */
const piecesDiffer = ({ wire }: Bench) => 2 * wire.batchSpread + 2 * wire.diameterTolerance;

function whatWouldDo(wire: NominalWire, other: NominalWire, smallest: number, largest: number): string {
  if (largest < smallest) return 'What would do: two wires of a smaller resistance, whose pieces differ less';
  const X = nominalResistance(wire);
  const length = Math.round((other.length * (X + (smallest + largest) / 2)) / nominalResistance(other));
  return `What would do: ${length} cm of ${other.made.material}, ${other.gauge}, beside ${wire.length} cm of ${wire.made.material}, ${wire.gauge}`;
}

const ohms = (value: number) => `${three(value)} Ω`;
