import { type Box, boxValues, makeBox } from '../apparatus/box.ts';
import { type Bridge, makeBridge } from '../apparatus/bridge.ts';
import { nearestMark } from '../apparatus/decimal.ts';
import { draw } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Random, Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { type Setting, idealNull, nominalResistance, planBridge } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { idealBridge } from './ideal.ts';
import { observeBridge, observeNull } from './observe-bridge.ts';
import { boxAndWire } from './on-bench.ts';
import { planOfOne } from './plan.ts';
import { whereToBalanceSteps } from './where-to-balance-steps.ts';

/** The same wire with null points all along the bridge wire: where an error of a millimetre matters least. */
export const whereToBalance: Experiment = {
  id: 'where-to-balance',
  edition: 1,
  wires: 1,
  // Null points close to the ends take from tenths of an ohm to nearly twenty times X.
  usual: {
    wires: ['constantan, SWG 30, 70 cm', 'constantan, SWG 32, 90 cm', 'manganin, SWG 32, 75 cm', 'nichrome, SWG 28, 65 cm', 'nichrome, SWG 30, 68 cm'],
    box: '0.1 0.2 0.2 0.5 1 2 2 5 10 20 20 50 100',
    rows: '3',
  },
  layout: {
    offWindow: ['lAlong'],
    circuit: 'bridge',
    observations: [
      { table: 'bridge', columns: ['R', 'l', 'r', 'X'], after: ['meanX'], rows: 'numbered' },
      { table: 'bridgeAlong', columns: ['RAlong', 'lAlong', 'rAlong', 'XAlong', 'away', 'reach'], after: [], rows: 'numbered' },
      { graph: 'error', x: 'lAlong', y: 'reach', fromZero: ['x', 'y'] },
    ],
    working: ['X', 'meanX', 'XAlong', 'away', 'reach'],
    result: ['meanX'],
    answers: ['meanX'],
    apart: ['meanX', 'X', 'XAlong'],
    uncertain: ['meanX'],
    truths: [
      { id: 'X', unit: 'Ω' },
      { id: 'celsius', unit: '°C' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
    ],
  },
  steps: (form) => whereToBalanceSteps(form['known'] as KnownGap),
  plan: (ask) => ({ ...planOfOne(planBridge(ask), ask.rows), unfit: lacking(ask) }),
  observe,
  bench: boxAndWire(({ known }) => [
    { firstIn: known, reads: { R: 'box', l: 'scale' } },
    { firstIn: known, reads: { RAlong: 'box', lAlong: 'scale' } },
  ]),
  ideal(ask) {
    const middle = idealBridge(ask);
    const along = settingsAlong(ask).map((settings, i) => nearest(settings, PLACES[i]!));
    return { form: { known: ask.known }, readings: { ...givens(ask), ...middle, ...alongTheWire(along.map(({ R, l }) => ({ R, l: nearestMark(l, ask.bench.bridge.scaleDivision) }))) } };
  },
  halfWidths: ({ bench }) => bridgeHalfWidths(bench),
};

/** Where null points are wanted, in cm: close together where the error changes fast. */
const PLACES = [5, 10, 20, 50, 80, 90, 95];
/** About there: a box does not balance anywhere. */
const ABOUT = 2;

const givens = ({ bench }: Ask) => ({ W: '100.0', dl: bench.bridge.scaleDivision });

/** Settings of the box, by place, that balance about it. */
function settingsAlong(ask: Ask): Setting[][] {
  const X = nominalResistance(ask.wire);
  const all = boxValues(ask.bench.box.plugs).map((R) => ({ R, l: idealNull(ask.known, Number(R), X) }));
  return PLACES.map((place) => all.filter(({ l }) => Math.abs(l - place) <= ABOUT));
}

const nearest = (settings: readonly Setting[], place: number) => settings.reduce((best, one) => (Math.abs(one.l - place) < Math.abs(best.l - place) ? one : best));

function lacking(ask: Ask): string[] {
  const settings = settingsAlong(ask);
  const missed = PLACES.filter((_, i) => settings[i]!.length === 0);
  const X = Math.round(10 * nominalResistance(ask.wire)) / 10;
  return missed.length === 0
    ? []
    : [`its resistance is about ${X} Ω, and no setting of the box balances within ${ABOUT} cm of ${missed.join(', ')} cm; the box must reach from a twentieth of X to twenty times X: a wire of 3 to 9 Ω and the plugs 0.1 0.2 0.2 0.5 1 2 2 5 10 20 20 50 100 Ω would do`];
}

interface Row {
  R: Written;
  l: Written;
}

const alongTheWire = (rows: readonly Row[]) => ({ RAlong: rows.map(({ R }) => R), lAlong: rows.map(({ l }) => l) });

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const X = wireResistance(makeWire(bench, ask.wire.made, ask.wire, streams.of('wire')), celsius);
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const middle = observeBridge(ask, bridge, box, X, streams.of('null points'));
  if (!middle) return undefined;
  return {
    form: { known: ask.known, plugs: bench.box.plugs.join(' ') },
    readings: { ...givens(ask), R: middle.R, l: middle.l, ...alongTheWire(observeAlong(ask, bridge, box, X, streams.of('along the wire'))) },
    truth: { X, celsius, endLeft: bridge.endCorrection.left, endRight: bridge.endCorrection.right },
  };
}

/** A null point about each place, taken wherever it falls. */
function observeAlong(ask: Ask, bridge: Bridge, box: Box, X: number, random: Random): Row[] {
  const anywhere: Ask = { ...ask, window: [1, 99] };
  return settingsAlong(ask).map((settings) => {
    const { R } = random.pick(settings);
    return { R, l: observeNull(anywhere, bridge, box, R, X, ask.known, random)! };
  });
}
