import { type Box, boxResistance, boxValues, makeBox, reseat } from '../apparatus/box.ts';
import { type Bridge, makeBridge } from '../apparatus/bridge.ts';
import { nearestMark } from '../apparatus/decimal.ts';
import { draw } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { idealNull, planBridge } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import { endCorrectionsSteps } from './end-corrections-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { idealBridge } from './ideal.ts';
import { observeBridge, observeNull, observeRows } from './observe-bridge.ts';
import { type Laid, withOneBox } from './on-bench.ts';
import { planOfOne } from './plan.ts';

/** The end corrections of a bridge from two known resistances and the interchange; then X of a wire, corrected with them. */
export const endCorrections: Experiment = {
  id: 'end-corrections',
  edition: 1,
  wires: 1,
  // Corrections of some millimetres are lost in usual hands; X is taken far from mid-wire too, where they count.
  usual: {
    wires: ['constantan, SWG 28, 60 cm', 'manganin, SWG 30, 55 cm', 'nichrome, SWG 26, 75 cm'],
    box: '0.1 0.2 0.2 0.5 1 2 2 5 10 20 20 50',
    window: '30-70',
    hands: 'careful',
  },
  layout: {
    offWindow: ['l1', 'l2'],
    circuit: 'bridge',
    observations: [
      { table: 'ends', columns: ['R1', 'R2', 'l1', 'l2', 'alpha', 'beta'], after: ['meanAlpha', 'meanBeta'], rows: 'numbered' },
      { table: 'bridge', columns: ['R', 'l', 'r', 'X', 'Xc'], after: ['meanX', 'meanXc'], rows: 'numbered' },
    ],
    working: ['alpha', 'meanAlpha', 'beta', 'meanBeta', 'X', 'meanX', 'Xc', 'meanXc'],
    result: ['meanAlpha', 'meanBeta', 'meanX', 'meanXc'],
    answers: ['meanAlpha', 'meanBeta', 'meanX', 'meanXc'],
    apart: ['meanXc', 'meanX', 'X'],
    uncertain: ['meanAlpha', 'meanBeta', 'meanXc'],
    truths: [
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
      { id: 'X', unit: 'Ω' },
      { id: 'celsius', unit: '°C' },
    ],
  },
  steps: (form) => endCorrectionsSteps(form['known'] as KnownGap),
  plan: (ask) => ({ ...planOfOne(planBridge(ask), ask.rows), unfit: pairsOf(ask).length >= ask.rows ? [] : [tooSmallABox(ask)] }),
  observe,
  bench,
  ideal,
  halfWidths({ bench }) {
    const { boxError, uneven, contact } = bridgeHalfWidths(bench) as Record<'boxError' | 'uneven' | 'contact', { absolute: number }>;
    return { boxError, secondError: boxError, uneven, contact, joint: { absolute: bench.bridge.jointsPerGap * bench.bridge.joint[1] } };
  },
};

/** The joints of a gap pass for 100 cm times their part of R1: with 25 mΩ, below so many ohms, for more than a millimetre of bridge wire. */
const LEAST = 20;
const STEP = 5;
/** R1 is so many times R2, common practice, no source: null points far from mid-wire, where the ends count. */
const RATIOS = [4, 10] as const;

/** A value of R1 that a box can give, with the whole ohms for R2 beside it. */
interface Pairs {
  R1: Written;
  R2: Written[];
}

const pairsKept = new WeakMap<readonly Written[], Pairs[]>();

/** The pairs of a box, R1 in the upper half of what it has; worked out once for a box. */
function pairsOf({ bench }: Ask): Pairs[] {
  const values = boxValues(bench.box.plugs);
  const kept = pairsKept.get(values) ?? allPairs(values);
  pairsKept.set(values, kept);
  return kept;
}

function allPairs(values: readonly Written[]): Pairs[] {
  const least = Math.max(LEAST, Number(values.at(-1)) / 2);
  const whole = values.filter((R) => Number.isInteger(Number(R)));
  const beside = (R1: number) => whole.filter((R2) => R1 >= RATIOS[0] * Number(R2) && R1 <= RATIOS[1] * Number(R2));
  return whole
    .filter((R1) => Number(R1) >= least && Number(R1) % STEP === 0)
    .map((R1) => ({ R1, R2: beside(Number(R1)) }))
    .filter(({ R2 }) => R2.length > 0);
}

const tooSmallABox = ({ rows }: Ask) =>
  `for ${rows} rows of known resistances the box must give as many whole multiples of ${STEP} Ω from ${LEAST} Ω upwards, all in the upper half of what it has; a box with the plugs 0.1 0.2 0.2 0.5 1 2 2 5 10 20 20 50 Ω would do`;

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const X = wireResistance(makeWire(bench, ask.wire.made, ask.wire, streams.of('wire')), celsius);
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const ends = observeEnds(ask, bridge, box, streams);
  const table = observeBridge(ask, bridge, box, X, streams.of('null points'));
  if (!ends || !table) return undefined;
  return {
    form: { known: ask.known, plugs: bench.box.plugs.join(' ') },
    readings: { W: '100.0', ...ends, R: table.R, l: table.l },
    // Seen from the scale: where its zero lies inside the wire's end, the left end is that much longer, and the right one shorter.
    truth: { X, celsius, endLeft: bridge.endCorrection.left + bridge.scaleOffset, endRight: bridge.endCorrection.right - bridge.scaleOffset },
  };
}

/** Both boxes first, then one of them with the wire. */
function bench(ask: Ask, streams: Streams, truth: Readonly<Record<string, number>>): Laid {
  const laid = withOneBox(ask, streams, [
    {
      second: 'second box',
      taken: [
        { firstIn: 'left', reads: { R1: 'box', R2: 'second box', l1: 'scale' } },
        { firstIn: 'right', reads: { R1: 'box', R2: 'second box', l2: 'scale' } },
      ],
    },
    { second: { name: 'wire', ohms: () => truth['X']! }, taken: [{ firstIn: ask.known, reads: { R: 'box', l: 'scale' } }] },
  ]);
  return { ...laid, boxes: { ...laid.boxes, 'second box': [makeBox(ask.bench, streams.of('second box'))] } };
}

type EndsTable = Record<'R1' | 'R2' | 'l1' | 'l2', Written[]>;

/** Two boxes in the gaps, and then the boxes interchanged. */
function observeEnds(ask: Ask, bridge: Bridge, box: Box, streams: Streams): EndsTable | undefined {
  const second = makeBox(ask.bench, streams.of('second box'));
  const random = streams.of('known resistances');
  const anywhere: Ask = { ...ask, window: [0, 100] };
  const pairs = pairsOf(ask);
  const settings = pairs.map(({ R1, R2 }) => ({ R: R1, l: idealNull('left', Number(R1), Number(R2[0])) }));
  const rows = observeRows(ask, settings, random, (R1) => {
    const R2 = random.pick(pairs.find((pair) => pair.R1 === R1)!.R2);
    const nullPoint = (known: KnownGap) => observeNull(anywhere, bridge, box, R1, boxResistance(reseat(second, ask.bench, random), R2), known, random)!;
    const l1 = nullPoint('left');
    return { R2, l1, l2: nullPoint('right') };
  });
  return rows && { R1: rows.map(({ R }) => R), R2: rows.map(({ read }) => read.R2), l1: rows.map(({ read }) => read.l1), l2: rows.map(({ read }) => read.l2) };
}

function ideal(ask: Ask): Pick<Observed, 'form' | 'readings'> {
  const { R, l } = idealBridge(ask);
  const pairs = pairsOf(ask).slice(-ask.rows);
  const R1 = pairs.map((pair) => pair.R1);
  const R2 = pairs.map((pair) => pair.R2[0]!);
  const at = (left: Written[], right: Written[]) => left.map((value, row) => nearestMark(idealNull('left', Number(value), Number(right[row])), ask.bench.bridge.scaleDivision));
  return { form: { known: ask.known }, readings: { W: '100.0', R1, R2, l1: at(R1, R2), l2: at(R2, R1), R: R!, l: l! } };
}
