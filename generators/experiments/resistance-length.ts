import { makeBox } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { nearestMark } from '../apparatus/decimal.ts';
import { draw } from '../apparatus/draw.ts';
import { makeScrewGauge } from '../apparatus/screw-gauge.ts';
import { makeWire, resistivityAt, wireResistance } from '../apparatus/wire.ts';
import { scientific } from '../quantities/written.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { nominalResistance, planResistance } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths, gaugeHalfWidths } from './half-widths.ts';
import { idealGauge } from './ideal.ts';
import { observeDiameter } from './observe-diameter.ts';
import { observeLengths } from './observe-lengths.ts';
import { withOneBox } from './on-bench.ts';
import type { Plan } from './plan.ts';
import { resistanceLengthSteps } from './resistance-length-steps.ts';
import type { ZeroError } from './screw-gauge-steps.ts';

/** Resistance against length of one wire: resistivity from the slope, leads and contacts from the intercept. */
export const resistanceLength: Experiment = {
  id: 'resistance-length',
  edition: 1,
  wires: 1,
  usual: {
    wires: [
      'constantan, SWG 28, 100 cm', 'manganin, SWG 28, 110 cm', 'nichrome, SWG 26, 90 cm', 'constantan, SWG 30, 100 cm', 'manganin, SWG 30, 100 cm',
      'nichrome, SWG 28, 100 cm', 'constantan, SWG 26, 120 cm', 'constantan, SWG 32, 90 cm', 'manganin, SWG 32, 100 cm', 'nichrome, SWG 30, 80 cm',
    ],
    rows: '5',
  },
  layout: {
    circuit: 'bridge',
    observations: [
      { table: 'lengths', columns: ['L', 'R', 'l', 'r', 'X'], after: [], rows: 'numbered' },
      { values: ['pitch', 'N', 'LC', 'n0', 'e'] },
      { table: 'gauge', columns: ['msr', 'n', 'csr', 'dObs'], after: ['meanD', 'd'], rows: 'pairs' },
      { graph: 'length', x: 'L', y: 'X', slope: 'g', intercept: 'b', fromZero: ['x', 'y'] },
    ],
    decided: [{ choice: 'zero', by: 'n0', formula: 'e', cases: ['positive', 'negative'] satisfies ZeroError[] }],
    working: ['X', 'meanD', 'd', 'g', 'b', 'rho', 'off'],
    result: ['g', 'b', 'rho', 'off'],
    answers: ['g', 'b', 'd', 'rho', 'off'],
    apart: ['X', 'g', 'd'],
    uncertain: ['g', 'b', 'rho'],
    truths: [
      { id: 'perCm', unit: 'Ω/cm' },
      { id: 'leads', unit: 'Ω' },
      { id: 'rho', unit: 'Ω m' },
      { id: 'd', unit: 'mm' },
      { id: 'celsius', unit: '°C' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
      { id: 'zeroError', unit: 'mm' },
    ],
  },
  steps: (form) => resistanceLengthSteps(form['known'] as KnownGap, form['zero'] as ZeroError),
  plan,
  observe,
  bench(ask, streams, { perCm, leads }) {
    const wire = { name: 'wire', ohms: ({ length }: { length: number }) => perCm! * length + leads! };
    const laid = withOneBox(ask, streams, [{ second: wire, taken: [{ firstIn: ask.known, reads: { L: 'rule', R: 'box', l: 'scale' } }] }]);
    return { ...laid, clips: [SHORTEST, ask.wire.length] };
  },
  ideal,
  halfWidths: ({ bench }) => ({ ...bridgeHalfWidths(bench), ...gaugeHalfWidths(bench) }),
};

/** So near in cm the clips can be set to one another; common practice, no source. */
const SHORTEST = 10;

/** Lengths to be taken, in whole centimetres, evenly up to the whole wire; each is balanced once. */
function lengths(ask: Ask) {
  const { wire, rows } = ask;
  const all = Array.from({ length: rows }, (_, row) => Math.round((wire.length * (row + 1)) / rows));
  return all.map((length) => ({ length, of: `${length} cm`, ...planResistance(ask, nominalResistance({ ...wire, length })), wanted: 1 }));
}

function plan(ask: Ask): Plan {
  return { balances: lengths(ask), unfit: [] };
}

const givens = ({ wire }: Ask) => ({ W: '100.0', rhoTable: scientific(wire.accepted.rho) });

function ideal(ask: Ask): Pick<Observed, 'form' | 'readings'> {
  const { rule, bridge } = ask.bench;
  const chosen = lengths(ask).map(({ length, usable }) => ({ length, ...usable[Math.floor(usable.length / 2)]! }));
  const table = { L: chosen.map(({ length }) => nearestMark(length, rule.division)), R: chosen.map(({ R }) => R), l: chosen.map(({ l }) => nearestMark(l, bridge.scaleDivision)) };
  return { form: { known: ask.known, zero: 'none' }, readings: { ...givens(ask), ...table, ...idealGauge(ask) } };
}

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const wire = makeWire(bench, ask.wire.made, ask.wire, streams.of('wire'));
  const bridge = makeBridge(bench, streams.of('bridge'));
  const gauge = makeScrewGauge(bench, streams.of('screw gauge'));
  const leads = draw(bench.wire.leads, streams.of('leads'));
  const table = observeLengths(ask, { bridge, box: makeBox(bench, streams.of('box')), wire, celsius, leads }, lengths(ask), streams.of('null points'));
  if (!table) return undefined;
  const diameter = observeDiameter(ask, gauge, wire, streams.of('diameters'));
  return {
    form: { known: ask.known, zero: diameter.zero, plugs: bench.box.plugs.join(' ') },
    readings: { ...givens(ask), ...table, ...diameter.readings },
    truth: {
      perCm: wireResistance(wire, celsius, 1),
      leads,
      rho: resistivityAt(wire, celsius),
      d: wire.diameter,
      celsius,
      endLeft: bridge.endCorrection.left,
      endRight: bridge.endCorrection.right,
      zeroError: gauge.zeroOffset,
    },
  };
}
