import { makeBox } from '../apparatus/box.ts';
import { makeBridge, parallel } from '../apparatus/bridge.ts';
import { draw } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { type BridgePlan, nominalResistance, planResistance } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { idealBridge } from './ideal.ts';
import { observeBridge } from './observe-bridge.ts';
import { withOneBox } from './on-bench.ts';
import { COMBINATIONS, type Combination, seriesParallelSteps } from './series-parallel-steps.ts';

/** Two wires alone, in series and in parallel: what the bridge finds beside what theory says. */
export const seriesParallel: Experiment = {
  id: 'series-parallel',
  edition: 1,
  wires: 2,
  usual: {
    wires: ['constantan, SWG 28, 60 cm', 'constantan, SWG 30, 70 cm', 'manganin, SWG 30, 55 cm', 'manganin, SWG 32, 75 cm', 'nichrome, SWG 26, 75 cm', 'nichrome, SWG 28, 50 cm'],
    rows: '3',
  },
  layout: {
    circuit: 'bridge',
    observations: COMBINATIONS.map((each) => ({ table: `bridge${each}`, columns: [`R${each}`, `l${each}`, `r${each}`, `X${each}`], after: [`meanX${each}`], rows: 'numbered' })),
    working: [...COMBINATIONS.flatMap((each) => [`X${each}`, `meanX${each}`]), 'series', 'seriesOff', 'parallel', 'parallelOff'],
    result: ['meanXSeries', 'series', 'seriesOff', 'meanXParallel', 'parallel', 'parallelOff'],
    answers: ['meanXOne', 'meanXTwo', 'meanXSeries', 'meanXParallel', 'seriesOff', 'parallelOff'],
    apart: COMBINATIONS.map((each) => `meanX${each}`),
    uncertain: ['seriesOff', 'parallelOff'],
    truths: [...COMBINATIONS.map((each) => ({ id: `X${each}`, unit: 'Ω' })), { id: 'celsius', unit: '°C' }, { id: 'endLeft', unit: 'cm' }, { id: 'endRight', unit: 'cm' }],
  },
  steps: (form) => seriesParallelSteps(form['known'] as KnownGap),
  plan: (ask) => ({ balances: COMBINATIONS.map((each) => ({ of: names[each], ...planOf(ask)[each], wanted: ask.rows })), unfit: [] }),
  observe,
  bench: (ask, streams, truth) =>
    withOneBox(ask, streams, COMBINATIONS.map((each) => ({ second: { name: each, ohms: () => truth[`X${each}`]! }, taken: [{ firstIn: ask.known, reads: { [`R${each}`]: 'box', [`l${each}`]: 'scale' } }] }))),
  ideal: (ask) => ({ form: { known: ask.known }, readings: tables((each) => idealBridge(ask, planOf(ask)[each]) as Table) }),
  halfWidths: ({ bench }) => ({ ...bridgeHalfWidths(bench), joint: { absolute: bench.bridge.joint[1] } }),
};

/** As a terminal calls them. */
const names: Record<Combination, string> = { One: 'the first wire', Two: 'the second wire', Series: 'both in series', Parallel: 'both in parallel' };

type Table = Readings & Record<'R' | 'l', string[]>;

/** The readings of all tables; each table's ids end in its combination. */
function tables(of: (each: Combination) => Table): Readings {
  const each = COMBINATIONS.map((combination) => ({ combination, table: of(combination) }));
  return { W: '100.0', ...Object.fromEntries(each.flatMap(({ combination, table }) => [[`R${combination}`, table.R], [`l${combination}`, table.l]])) };
}

const joined = (one: number, two: number, joint = 0): Record<Combination, number> => ({ One: one, Two: two, Series: one + joint + two, Parallel: parallel(one, two) });

function planOf(ask: Ask): Record<Combination, BridgePlan> {
  const X = joined(nominalResistance(ask.wire), nominalResistance(ask.others[0]!));
  return Object.fromEntries(COMBINATIONS.map((each) => [each, planResistance(ask, X[each])])) as Record<Combination, BridgePlan>;
}

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const celsius = draw(bench.room, streams.of('room'));
  const [one, two] = [ask.wire, ask.others[0]!].map((wire, i) => wireResistance(makeWire(bench, wire.made, wire, streams.of('wire', i)), celsius)) as [number, number];
  // In parallel both wires end under the same screws, which count as joints of the gap; in series one more screw joins them.
  const X = joined(one, two, draw(bench.bridge.joint, streams.of('joint')));
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const plan = planOf(ask);
  const found = new Map<Combination, Table>();
  for (const each of COMBINATIONS) {
    const table = observeBridge(ask, bridge, box, X[each], streams.of('null points', each), plan[each]);
    if (!table) return undefined;
    found.set(each, { R: table.R, l: table.l });
  }
  return {
    form: { known: ask.known, plugs: bench.box.plugs.join(' ') },
    readings: tables((each) => found.get(each)!),
    truth: { ...Object.fromEntries(COMBINATIONS.map((each) => [`X${each}`, X[each]])), celsius, endLeft: bridge.endCorrection.left, endRight: bridge.endCorrection.right },
  };
}
