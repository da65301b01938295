import { makeBox } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { draw } from '../apparatus/draw.ts';
import { readRule } from '../apparatus/rule.ts';
import { makeScrewGauge } from '../apparatus/screw-gauge.ts';
import { makeWire, resistivityAt, wireResistance } from '../apparatus/wire.ts';
import { scientific } from '../quantities/written.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { planBridge } from './bridge-plan.ts';
import { type KnownGap, bridgeSteps } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths, gaugeHalfWidths, ruleHalfWidths } from './half-widths.ts';
import { idealBridge, idealGauge } from './ideal.ts';
import { observeBridge } from './observe-bridge.ts';
import { observeDiameter } from './observe-diameter.ts';
import { boxAndWire } from './on-bench.ts';
import { planOfOne } from './plan.ts';
import { resistivitySteps } from './resistivity-steps.ts';
import { type ZeroError, screwGaugeSteps } from './screw-gauge-steps.ts';

/** Resistance of a wire by the metre bridge, then its resistivity. */
export const resistivity: Experiment = {
  id: 'resistivity',
  edition: 1,
  wires: 1,
  usual: { wires: ['constantan, SWG 28, 60 cm', 'manganin, SWG 30, 55 cm', 'nichrome, SWG 26, 75 cm'] },
  layout: {
    circuit: 'bridge',
    observations: [
      { table: 'bridge', columns: ['R', 'l', 'r', 'X'], after: ['meanX'], rows: 'numbered' },
      { values: ['L', 'pitch', 'N', 'LC', 'n0', 'e'] },
      { table: 'gauge', columns: ['msr', 'n', 'csr', 'dObs'], after: ['meanD', 'd'], rows: 'pairs' },
    ],
    decided: [{ choice: 'zero', by: 'n0', formula: 'e', cases: ['positive', 'negative'] satisfies ZeroError[] }],
    working: ['X', 'meanX', 'meanD', 'd', 'rho', 'off'],
    result: ['meanX', 'rho', 'off'],
    answers: ['meanX', 'e', 'd', 'rho', 'off'],
    apart: ['meanX', 'X', 'd'],
    uncertain: ['meanX', 'rho'],
    truths: [
      { id: 'X', unit: 'Ω' },
      { id: 'rho', unit: 'Ω m' },
      { id: 'd', unit: 'mm' },
      { id: 'L', unit: 'cm' },
      { id: 'celsius', unit: '°C' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
      { id: 'zeroError', unit: 'mm' },
    ],
  },
  steps: (form) => [...bridgeSteps(form['known'] as KnownGap), ...screwGaugeSteps(form['zero'] as ZeroError), ...resistivitySteps()],
  plan: (ask) => planOfOne(planBridge(ask), ask.rows),
  observe,
  bench: boxAndWire(({ known }) => [{ firstIn: known, reads: { R: 'box', l: 'scale' } }]),
  ideal: (ask) => ({
    form: { known: ask.known, zero: 'none' },
    readings: { ...givens(ask), ...idealBridge(ask), ...idealGauge(ask), L: `${ask.wire.length}` },
  }),
  halfWidths: ({ bench }) => ({ ...bridgeHalfWidths(bench), ...gaugeHalfWidths(bench), ...ruleHalfWidths(bench) }),
};

const givens = ({ wire }: Ask) => ({ W: '100.0', rhoTable: scientific(wire.accepted.rho) });

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const wire = makeWire(bench, ask.wire.made, ask.wire, streams.of('wire'));
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const gauge = makeScrewGauge(bench, streams.of('screw gauge'));
  const X = wireResistance(wire, celsius);
  const table = observeBridge(ask, bridge, box, X, streams.of('null points'));
  if (!table) return undefined;
  const diameter = observeDiameter(ask, gauge, wire, streams.of('diameters'));
  const L = readRule(bench, wire.length, ask.hands, streams.of('length'));
  return {
    form: { known: ask.known, zero: diameter.zero, plugs: ask.bench.box.plugs.join(' ') },
    readings: { ...givens(ask), ...table, ...diameter.readings, L },
    truth: {
      X,
      rho: resistivityAt(wire, celsius),
      d: wire.diameter,
      L: wire.length,
      celsius,
      endLeft: bridge.endCorrection.left,
      endRight: bridge.endCorrection.right,
      zeroError: gauge.zeroOffset,
    },
  };
}
