import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { balance } from './families/balance.ts';
import { bothGaps } from './families/both-gaps.ts';
import { combination } from './families/combination.ts';
import { endCorrections } from './families/end-corrections.ts';
import { endCorrectionsFound } from './families/end-corrections-found.ts';
import { removed } from './families/removed.ts';
import { ring } from './families/ring.ts';
import { scaling } from './families/scaling.ts';
import { series } from './families/series.ts';
import { interchange } from './families/interchange.ts';
import { shunt } from './families/shunt.ts';
import { wireLength } from './families/wire-length.ts';
import { nonUniform } from './families/non-uniform.ts';
import { tapered } from './families/tapered.ts';
import { twoPartWire } from './families/two-part-wire.ts';
import { bridgeWireChanged } from './families/bridge-wire.ts';
import { reshaped } from './families/reshaped.ts';
import { materials } from './families/materials.ts';
import { temperature } from './families/temperature.ts';
import { temperatures } from './families/temperatures.ts';
import { currents } from './families/currents.ts';
import { gradient } from './families/gradient.ts';
import { offBalance } from './families/off-balance.ts';
import { openBridge } from './families/open-bridge.ts';
import { exchange } from './families/exchange.ts';
import { faultyGap } from './families/faulty-gap.ts';
import { bestChoice } from './families/best-choice.ts';
import { errorOfX } from './families/error-of-x.ts';
import { errorOfResistivity } from './families/error-of-resistivity.ts';
import { equalShunts } from './families/equal-shunts.ts';
import { lengthPerOhm } from './families/length-per-ohm.ts';
import { screwGauge } from './families/screw-gauge.ts';
import { resistivity } from './families/resistivity.ts';
import { resistivityBridge } from './families/resistivity-bridge.ts';
import { gauge } from './families/gauge.ts';
import { careyFoster } from './families/carey-foster.ts';
import { careyFosterWire } from './families/carey-foster-wire.ts';
import { kelvin } from './families/kelvin.ts';
import { wheatstone } from './families/wheatstone.ts';
import { armsSwapped } from './families/arms-swapped.ts';
import { inconsistentRow } from './families/inconsistent-row.ts';
import { diameterReport } from './families/diameter-report.ts';
import { viva } from './families/viva.ts';
import { assertionReason } from './families/assertion-reason.ts';
import type { Family } from './family.ts';

/** All families, in the order of a syllabus. */
export const families: readonly Family[] = [balance, interchange, scaling, series, removed, shunt, bothGaps, combination, ring, endCorrections, endCorrectionsFound, wireLength, nonUniform, tapered, twoPartWire, bridgeWireChanged, reshaped, materials, temperature, temperatures, currents, gradient, offBalance, openBridge, exchange, faultyGap, bestChoice, errorOfX, errorOfResistivity, equalShunts, lengthPerOhm, screwGauge, resistivity, resistivityBridge, gauge, careyFoster, careyFosterWire, kelvin, wheatstone, armsSwapped, inconsistentRow, diameterReport, viva, assertionReason];

/** The family of that id; UserMistake with the nearest where there is none. */
export function familyNamed(id: string): Family {
  const found = families.find((family) => family.id === id);
  if (found) return found;
  throw new UserMistake(`no family "${id}"${didYouMean(id, families.map((family) => family.id)) || '; slidewire families lists them'}`);
}
