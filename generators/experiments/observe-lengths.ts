import type { Box } from '../apparatus/box.ts';
import type { Bridge } from '../apparatus/bridge.ts';
import { readRule } from '../apparatus/rule.ts';
import { type Wire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Ask } from './ask.ts';
import { type Setting, middleThird } from './bridge-plan.ts';
import { observeNull, observeRows } from './observe-bridge.ts';

/** What stands on the bench: the wire at the room's temperature, and what leads and clips add to it, in Ω. */
export interface Laid {
  bridge: Bridge;
  box: Box;
  wire: Wire;
  celsius: number;
  leads: number;
}

/** A length to be taken, in cm, and the settings that balance it. */
export interface Taken {
  length: number;
  usable: readonly Setting[];
}

type LengthTable = Record<'L' | 'R' | 'l', Written[]>;

/** One null point for each length, whose second clip is set by eye. Undefined where the bench does not give them. */
export function observeLengths(ask: Ask, { bridge, box, wire, celsius, leads }: Laid, lengths: readonly Taken[], random: Random): LengthTable | undefined {
  const table: LengthTable = { L: [], R: [], l: [] };
  for (const { length, usable } of lengths) {
    const clipped = length + ask.bench.wire.cutting * random.normal();
    const X = wireResistance(wire, celsius, clipped) + leads;
    const rows = observeRows({ ...ask, rows: 1 }, middleThird(usable), random, (R) => observeNull(ask, bridge, box, R, X, ask.known, random));
    if (!rows) return undefined;
    table.L.push(readRule(ask.bench, clipped, ask.hands, random));
    table.R.push(rows[0]!.R);
    table.l.push(rows[0]!.read);
  }
  return table;
}
