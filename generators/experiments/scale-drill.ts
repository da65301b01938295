import { makeBox } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { draw } from '../apparatus/draw.ts';
import { readRule } from '../apparatus/rule.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { planBridge } from './bridge-plan.ts';
import { type KnownGap, bridgeSteps } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { idealBridge } from './ideal.ts';
import { observeBridge } from './observe-bridge.ts';
import { planOfOne } from './plan.ts';

/** Null points, settings of the resistance box and a length, drawn to be read; one wire in all rows, so that X tells whether they were read well. */
export const scaleDrill: Experiment = {
  id: 'scale-drill',
  edition: 1,
  wires: 1,
  usual: {
    wires: ['constantan, SWG 28, 60 cm', 'manganin, SWG 30, 55 cm', 'nichrome, SWG 26, 75 cm', 'constantan, SWG 30, 80 cm', 'nichrome, SWG 28, 50 cm'],
    rows: '4',
    window: '20-80',
    drawn: 'plugs scale rule',
  },
  layout: {
    observations: [{ table: 'bridge', columns: ['R', 'l', 'r', 'X'], after: ['meanX'], rows: 'lettered' }, { values: ['L'] }],
    working: ['X', 'meanX'],
    result: [],
    answers: ['X', 'meanX'],
    apart: ['r', 'X'],
    uncertain: [],
    truths: [
      { id: 'X', unit: 'Ω' },
      { id: 'L', unit: 'cm' },
    ],
  },
  steps: (form) => [...bridgeSteps(form['known'] as KnownGap), { kind: 'reading', id: 'L', tex: 'L', unit: 'cm', on: 'rule' }],
  plan: (ask) => planOfOne(planBridge(ask), ask.rows),
  observe,
  ideal: (ask) => ({ form: { known: ask.known }, readings: { W: '100.0', ...idealBridge(ask), L: `${ask.wire.length}` } }),
  halfWidths: () => ({}),
};

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const wire = makeWire(bench, ask.wire.made, ask.wire, streams.of('wire'));
  const X = wireResistance(wire, draw(bench.room, streams.of('room')));
  const table = observeBridge(ask, makeBridge(bench, streams.of('bridge')), makeBox(bench, streams.of('box')), X, streams.of('null points'));
  if (!table) return undefined;
  return {
    form: { known: ask.known, plugs: bench.box.plugs.join(' ') },
    readings: { W: '100.0', ...table, L: readRule(bench, wire.length, ask.hands, streams.of('length')) },
    truth: { X, L: wire.length },
  };
}
