import { makeBox } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { draw } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { planBridge } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { graphSteps } from './graph-steps.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { idealBridge } from './ideal.ts';
import { observeBridge } from './observe-bridge.ts';
import { boxAndWire } from './on-bench.ts';
import { planOfOne } from './plan.ts';

/** Resistance of a wire as the slope of a graph. */
export const graph: Experiment = {
  id: 'graph',
  edition: 1,
  wires: 1,
  usual: {
    // Resistances that lie well apart: a slope that is read off by eye is known to a few per cent.
    wires: [
      'constantan, SWG 26, 55 cm', 'manganin, SWG 26, 80 cm', 'constantan, SWG 28, 52 cm', 'manganin, SWG 28, 78 cm', 'nichrome, SWG 24, 85 cm', 'nichrome, SWG 26, 63 cm',
      'constantan, SWG 30, 75 cm', 'manganin, SWG 30, 98 cm', 'nichrome, SWG 28, 70 cm', 'constantan, SWG 32, 85 cm', 'nichrome, SWG 30, 65 cm', 'manganin, SWG 34, 85 cm',
    ],
    rows: '6',
  },
  layout: {
    circuit: 'bridge',
    observations: [
      { table: 'bridge', columns: ['R', 'l', 'r', 'ratio'], after: [], rows: 'numbered' },
      { graph: 'balance', x: 'ratio', y: 'R', slope: 'X', fromZero: ['x', 'y'] },
    ],
    working: ['ratio', 'X'],
    result: ['X'],
    answers: ['X'],
    apart: ['X'],
    uncertain: ['X'],
    truths: [
      { id: 'X', unit: 'Ω' },
      { id: 'celsius', unit: '°C' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
    ],
  },
  steps: (form) => graphSteps(form['known'] as KnownGap),
  plan: (ask) => planOfOne(planBridge(ask), ask.rows),
  observe,
  bench: boxAndWire(({ known }) => [{ firstIn: known, reads: { R: 'box', l: 'scale' } }]),
  ideal: (ask) => ({ form: { known: ask.known }, readings: { W: '100.0', ...idealBridge(ask) } }),
  halfWidths: ({ bench }) => bridgeHalfWidths(bench),
};

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const X = wireResistance(makeWire(bench, ask.wire.made, ask.wire, streams.of('wire')), celsius);
  const bridge = makeBridge(bench, streams.of('bridge'));
  const table = observeBridge(ask, bridge, makeBox(bench, streams.of('box')), X, streams.of('null points'));
  if (!table) return undefined;
  return {
    form: { known: ask.known, plugs: bench.box.plugs.join(' ') },
    readings: { W: '100.0', ...table },
    truth: { X, celsius, endLeft: bridge.endCorrection.left, endRight: bridge.endCorrection.right },
  };
}
