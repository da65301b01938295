import { makeBox } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { nearestMark } from '../apparatus/decimal.ts';
import { draw } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { type BridgePlan, planBridge } from './bridge-plan.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { idealBridge } from './ideal.ts';
import { interchangeSteps } from './interchange-steps.ts';
import { observeNull, observeRows } from './observe-bridge.ts';
import { boxAndWire } from './on-bench.ts';
import { planOfOne } from './plan.ts';

/** Resistance of a wire with the gaps interchanged, so that what is unequal at the two ends drops out. */
export const interchange: Experiment = {
  id: 'interchange',
  edition: 1,
  wires: 1,
  usual: { wires: ['constantan, SWG 28, 60 cm', 'manganin, SWG 30, 55 cm', 'nichrome, SWG 26, 75 cm'] },
  layout: {
    circuit: 'bridge',
    observations: [{ table: 'bridge', columns: ['R', 'l', 'X1', 'm', 'X2', 'X'], after: ['meanX'], rows: 'numbered' }],
    working: ['X1', 'X2', 'X', 'meanX'],
    result: ['meanX'],
    answers: ['meanX'],
    apart: ['meanX', 'X', 'X1', 'X2'],
    uncertain: ['meanX'],
    truths: [
      { id: 'X', unit: 'Ω' },
      { id: 'celsius', unit: '°C' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
    ],
  },
  steps: () => interchangeSteps,
  plan: (ask) => planOfOne(bothPositions(ask), ask.rows),
  observe,
  bench: boxAndWire(() => [
    { firstIn: 'left', reads: { R: 'box', l: 'scale' } },
    { firstIn: 'right', reads: { R: 'box', m: 'scale' } },
  ]),
  ideal(ask) {
    const { R, l } = idealBridge({ ...ask, known: 'left' });
    const mirrored = [l!].flat().map((place) => nearestMark(100 - Number(place), ask.bench.bridge.scaleDivision));
    return { form: {}, readings: { W: '100.0', R: R!, l: l!, m: mirrored } };
  },
  halfWidths: ({ bench }) => bridgeHalfWidths(bench),
};

/** Settings that balance inside the window in both positions. */
function bothPositions(ask: Ask): BridgePlan {
  const [low, high] = ask.window;
  const { X, usable } = planBridge({ ...ask, known: 'left' });
  return { X, usable: usable.filter(({ l }) => 100 - l >= low && 100 - l <= high) };
}

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const X = wireResistance(makeWire(bench, ask.wire.made, ask.wire, streams.of('wire')), celsius);
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const random = streams.of('null points');
  const rows = observeRows(ask, bothPositions(ask).usable, random, (R) => {
    const l = observeNull(ask, bridge, box, R, X, 'left', random);
    const m = observeNull(ask, bridge, box, R, X, 'right', random);
    return l !== undefined && m !== undefined ? { l, m } : undefined;
  });
  if (!rows) return undefined;
  return {
    form: { plugs: bench.box.plugs.join(' ') },
    readings: { W: '100.0', R: rows.map(({ R }) => R), l: rows.map(({ read }) => read.l), m: rows.map(({ read }) => read.m) },
    truth: { X, celsius, endLeft: bridge.endCorrection.left, endRight: bridge.endCorrection.right },
  };
}
