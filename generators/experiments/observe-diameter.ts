import type { ScrewGauge } from '../apparatus/screw-gauge.ts';
import { readGauge, readZero } from '../apparatus/screw-gauge.ts';
import { type Wire, acrossAt } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Ask } from './ask.ts';
import type { ZeroError } from './screw-gauge-steps.ts';

/** What is read off the screw gauge: its constants, the zero, and two directions at right angles at every place. */
export interface GaugeTable {
  pitch: Written;
  N: Written;
  n0: Written;
  msr: Written[];
  n: Written[];
}

/** Places along the wire at which the diameter is measured; common practice, no source. */
const PLACES = 4;

/** Which way the zero error goes by where the closed gauge stands. */
export const zeroSides: Record<ReturnType<typeof readZero>['zero'], ZeroError> = {
  'at the line': 'none',
  'short of the line': 'positive',
  'past the line': 'negative',
};

export function observeDiameter(ask: Ask, gauge: ScrewGauge, wire: Wire, random: Random): { zero: ZeroError; readings: GaugeTable } {
  const { zero, division } = readZero(gauge);
  const across = Array.from({ length: PLACES }, () => acrossAt(wire, random)).flat();
  const rows = across.map((opening) => readGauge(gauge, ask.bench, opening, ask.hands, random));
  return {
    zero: zeroSides[zero],
    readings: {
      pitch: gauge.pitch,
      N: String(gauge.divisions),
      n0: String(division),
      msr: rows.map((row) => row.main),
      n: rows.map((row) => String(row.division)),
    },
  };
}
