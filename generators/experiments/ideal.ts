import { nearestMark } from '../apparatus/decimal.ts';
import { gaugeShows, idealScrewGauge } from '../apparatus/screw-gauge.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Ask } from './ask.ts';
import { planBridge } from './bridge-plan.ts';

/** The bridge table with every error left out, at settings spread over the usable ones. */
export function idealBridge(ask: Ask, { usable } = planBridge(ask)): Readings {
  const chosen = Array.from({ length: ask.rows }, (_, row) => usable[Math.floor(((row + 0.5) * usable.length) / ask.rows)]!);
  return { R: chosen.map(({ R }) => R), l: chosen.map(({ l }) => nearestMark(l, ask.bench.bridge.scaleDivision)) };
}

/** The screw gauge without zero error or spread. */
export function idealGauge({ bench, wire }: Ask): Readings {
  const gauge = idealScrewGauge(bench);
  const { main, division } = gaugeShows(gauge, wire.diameter);
  return { pitch: gauge.pitch, N: String(gauge.divisions), n0: '0', msr: [main, main], n: [String(division), String(division)] };
}
