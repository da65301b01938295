import { readRest } from '../apparatus/balance.ts';
import type { Bench } from '../apparatus/bench.ts';
import { type Box, boxResistance, makeBox, reseat } from '../apparatus/box.ts';
import { type Bridge, type Gaps, makeBridge } from '../apparatus/bridge.ts';
import { careyFosterCurrent, careyFosterStretch } from '../apparatus/carey-foster.ts';
import { nearestMark } from '../apparatus/decimal.ts';
import { draw } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Random, Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import type { Setting } from './bridge-plan.ts';
import { armSettings, middle, planCareyFoster, stripSettings } from './carey-foster-plan.ts';
import { careyFosterSteps } from './carey-foster-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { observeRows, spread } from './observe-bridge.ts';
import type { Laid as OnBench } from './on-bench.ts';

/** The difference of two nearly equal resistances by Carey Foster's interchange, on a bridge wire whose resistance per cm is found first. */
export const careyFoster: Experiment = {
  id: 'carey-foster',
  edition: 1,
  wires: 2,
  usual: {
    wires: ['constantan, SWG 28, 60 cm', 'constantan, SWG 28, 55 cm', 'manganin, SWG 30, 52.5 cm', 'nichrome, SWG 26, 52 cm'],
    window: '5-95',
  },
  layout: {
    circuit: 'carey-foster',
    observations: [
      { table: 'strip', columns: ['R', 'la', 'lb', 'ba', 'perCm'], after: ['meanPerCm'], rows: 'numbered' },
      { table: 'pair', columns: ['P', 'l1', 'l2', 'shift', 'diff'], after: ['meanDiff'], rows: 'numbered' },
    ],
    working: ['perCm', 'meanPerCm', 'diff', 'meanDiff'],
    result: ['meanPerCm', 'meanDiff'],
    answers: ['meanPerCm', 'meanDiff'],
    apart: ['meanDiff', 'meanPerCm', 'diff', 'perCm'],
    uncertain: ['meanPerCm', 'meanDiff'],
    truths: [
      { id: 'perCm', unit: 'Ω/cm' },
      { id: 'X', unit: 'Ω' },
      { id: 'Y', unit: 'Ω' },
      { id: 'diff', unit: 'Ω' },
      { id: 'celsius', unit: '°C' },
    ],
  },
  steps: () => careyFosterSteps,
  plan: planCareyFoster,
  observe,
  bench,
  ideal,
  halfWidths({ bench }) {
    const { boxError, uneven } = bridgeHalfWidths(bench);
    // The double bow has what the long bow leaves of the limit: a third of its variance, as makeBridge draws the two.
    return { boxError: boxError!, uneven: uneven!, unevenTwice: { absolute: bench.bridge.unevenness / Math.sqrt(3) } };
  },
};

/** Everything that stands on the bench. */
interface Laid {
  bridge: Bridge;
  box: Box;
  /** The boxes in the inner gaps. */
  P: Box;
  Q: Box;
}

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench, others } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const [X, Y] = [ask.wire, others[0]!].map((wire, i) => wireResistance(makeWire(bench, wire.made, wire, streams.of('wire', i)), celsius)) as [number, number];
  const laid = lay(bench, streams);
  const { ohmsPerCm } = laid.bridge;
  const arms = armSettings(ask, ohmsPerCm);
  const random = streams.of('null points');
  const set = (R: Written) => boxResistance(reseat(laid.box, bench, random), R);
  const strip = observeRows(ask, stripSettings(ask, ohmsPerCm), random, (R) => interchanged(ask, laid, arms[Math.floor(arms.length / 2)]!.R, [set(R), 0], [0, set(R)], random));
  const pair = observeRows(ask, arms, random, (P) => interchanged(ask, laid, P, [X, Y], [Y, X], random));
  if (!strip || !pair || pair.some(({ read: [l1, l2] }) => Math.abs(Number(l1) - Number(l2)) < SMALLEST_SHIFT)) return undefined;
  return {
    form: { plugs: bench.box.plugs.join(' ') },
    readings: {
      W: '100.0',
      R: strip.map(({ R }) => R),
      la: strip.map(({ read }) => read[0]),
      lb: strip.map(({ read }) => read[1]),
      P: pair.map(({ R }) => R),
      l1: pair.map(({ read }) => read[0]),
      l2: pair.map(({ read }) => read[1]),
    },
    truth: { perCm: ohmsPerCm, X, Y, diff: Y - X, celsius },
  };
}

/** The box with a copper strip, then the two wires; the ratio arms stay as they are set. */
function bench(ask: Ask, streams: Streams, { X, Y }: Readonly<Record<string, number>>): OnBench {
  const { bridge, box, P, Q } = lay(ask.bench, streams);
  return {
    bridge,
    boxes: { box: [box], 'ratio arms': [P, Q] },
    flows({ bridge: connected, gaps, boxes, jockey }) {
      const [left, right] = boxes('ratio arms') as [number, number];
      return careyFosterCurrent(connected, gaps, { left, right }, jockey);
    },
    pairs: [
      { first: 'box', second: { name: 'strip', ohms: () => 0 }, taken: [{ firstIn: 'left', reads: { R: 'box', la: 'scale' } }, { firstIn: 'right', reads: { R: 'box', lb: 'scale' } }] },
      {
        first: { name: 'X', ohms: () => X! },
        second: { name: 'Y', ohms: () => Y! },
        taken: [{ firstIn: 'left', reads: { P: 'ratio arms', l1: 'scale' } }, { firstIn: 'right', reads: { P: 'ratio arms', l2: 'scale' } }],
      },
    ],
  };
}

function lay(bench: Bench, streams: Streams): Laid {
  const boxes = streams.of('boxes');
  return { bridge: makeBridge(bench, streams.of('bridge')), box: makeBox(bench, boxes), P: makeBox(bench, boxes), Q: makeBox(bench, boxes) };
}

/** Pieces that turn out to be as good as equal, with null points nearer than this in cm, are changed for others. */
const SMALLEST_SHIFT = 2;

/** The null points before and after the outer gaps are interchanged; undefined where one lies outside the window. */
function interchanged(ask: Ask, laid: Laid, P: Written, before: [number, number], after: [number, number], random: Random): [Written, Written] | undefined {
  const [low, high] = ask.window;
  const { bench } = ask;
  const arms = { left: boxResistance(reseat(laid.P, bench, random), P), right: boxResistance(reseat(laid.Q, bench, random), P) };
  const [one, other] = [before, after].map(([left, right]) => {
    const outer: Gaps = { left, right };
    return readRest(careyFosterStretch(laid.bridge, outer, arms), laid.bridge, bench, ask.hands, random);
  }) as [Written, Written];
  return [one, other].every((place) => Number(place) >= low && Number(place) <= high) ? [one, other] : undefined;
}

function ideal(ask: Ask): Pick<Observed, 'form' | 'readings'> {
  const ohmsPerCm = middle(ask.bench.bridge.wireResistance);
  const table = (settings: readonly Setting[]) => {
    const chosen = spread(settings, ask.rows).map((some) => some[Math.floor(some.length / 2)]!);
    const read = (place: number) => nearestMark(place, ask.bench.bridge.scaleDivision);
    return { R: chosen.map(({ R }) => R), before: chosen.map(({ l }) => read(l)), after: chosen.map(({ l }) => read(100 - l)) };
  };
  const [strip, pair] = [table(stripSettings(ask, ohmsPerCm)), table(armSettings(ask, ohmsPerCm))];
  return { form: {}, readings: { W: '100.0', R: strip.R, la: strip.before, lb: strip.after, P: pair.R, l1: pair.before, l2: pair.after } };
}
