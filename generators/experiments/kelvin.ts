import { readRest } from '../apparatus/balance.ts';
import { type Box, boxResistance, makeBox, reseat } from '../apparatus/box.ts';
import { type Bridge, makeBridge } from '../apparatus/bridge.ts';
import { draw } from '../apparatus/draw.ts';
import { armCurrent, equalDeflectionStretch, rheostatFor } from '../apparatus/kelvin.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import { round } from '../quantities/written.ts';
import type { Random, Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { nominalResistance, planResistance } from './bridge-plan.ts';
import { type KnownGap, bridgeInfluences, bridgeMean, bridgeTable } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { idealBridge } from './ideal.ts';
import { observeRows } from './observe-bridge.ts';
import { withOneBox } from './on-bench.ts';
import type { Plan } from './plan.ts';

const names = { suffix: 'Coil', tex: 'G' };

/** Kelvin's method: the resistance of a galvanometer in a gap, which itself shows when the bridge is balanced. */
export const kelvin: Experiment = {
  id: 'kelvin',
  edition: 1,
  wires: 1,
  usual: { wires: ['copper, SWG 22, 60 cm'], box: '1 2 2 5 10 20 20 50 100' },
  layout: {
    circuit: 'kelvin',
    observations: [{ table: 'bridgeCoil', columns: ['RCoil', 'lCoil', 'rCoil', 'XCoil'], after: ['meanXCoil'], rows: 'numbered' }],
    working: ['XCoil', 'meanXCoil'],
    result: ['meanXCoil'],
    answers: ['meanXCoil'],
    apart: ['meanXCoil', 'XCoil'],
    uncertain: ['meanXCoil'],
    truths: [
      { id: 'G', unit: 'Ω' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
    ],
  },
  steps: ({ known }) => [...bridgeInfluences, ...bridgeTable(known as KnownGap, names), bridgeMean(known as KnownGap, names)],
  plan,
  observe,
  bench(ask, streams, { G }) {
    const laid = withOneBox(ask, streams, [{ second: { name: 'galvanometer', ohms: () => G! }, taken: [{ firstIn: ask.known, reads: { RCoil: 'box', lCoil: 'scale' } }] }]);
    const tap = lead(ask, streams);
    return {
      ...laid,
      isInGap: true,
      flows({ bridge, firstIn, gaps, jockey, isPressed }) {
        const set = { known: firstIn, R: gaps[firstIn], tap };
        const rheostat = rheostatFor(bridge, set, BROUGHT_TO[0] * bridge.galvanometer.divisions);
        return armCurrent(bridge, { ...set, rheostat }, isPressed ? 'closed' : 'open', jockey);
      },
    };
  },
  ideal(ask) {
    const [low, high] = ask.bench.galvanometer.coil;
    const { R, l } = idealBridge(ask, planResistance(ask, (low + high) / 2));
    return { form: { known: ask.known }, readings: { W: '100.0', RCoil: R!, lCoil: l! } };
  },
  halfWidths: ({ bench }) => bridgeHalfWidths(bench),
};

/** The box has to suit every galvanometer that may stand on the bench. */
function plan(ask: Ask): Plan {
  const { coil } = ask.bench.galvanometer;
  const balances = [...new Set(coil)].map((ohms) => ({ of: `a galvanometer of ${three(ohms)} Ω`, ...planResistance(ask, ohms), wanted: ask.rows }));
  const lead = nominalResistance(ask.wire);
  const most = coil[0] / SMALL;
  if (lead <= most) return { balances, unfit: [] };
  return { balances, unfit: [`as the lead to the jockey it has about ${three(lead)} Ω, which makes the balance dull beside a galvanometer of ${three(coil[0])} Ω; take a lead below ${three(most)} Ω, such as copper, SWG 22, 60 cm`] };
}

/** How many times smaller than the coil a lead has to be so as not to count; common practice, no source. */
const SMALL = 20;

const three = (value: number) => round(value, { figures: 3 }, 'even');

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench, known } = ask;
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const G = bridge.galvanometer.coil;
  const tap = lead(ask, streams);
  const random = streams.of('null points');
  const rows = observeRows(ask, planResistance(ask, G).usable, random, (R) => equalDeflection(ask, bridge, box, R, tap, random));
  if (!rows) return undefined;
  return {
    form: { known, plugs: bench.box.plugs.join(' ') },
    readings: { W: '100.0', RCoil: rows.map(({ R }) => R), lCoil: rows.map(({ read }) => read) },
    truth: { G, endLeft: bridge.endCorrection.left, endRight: bridge.endCorrection.right },
  };
}

/** The student's wire leads from the middle strip through the key to the jockey; with its joints, in Ω. */
function lead({ bench, wire }: Ask, streams: Streams): number {
  const random = streams.of('lead');
  const celsius = draw(bench.room, random);
  return wireResistance(makeWire(bench, wire.made, wire, random), celsius) + draw(bench.bridge.joint, random) + draw(bench.bridge.joint, random);
}

/** The part of its scale to which the needle is brought with the key open; common practice, no source. */
const BROUGHT_TO = [0.6, 0.9] as const;

/** Where closing the key leaves the needle where it is, as it is read; undefined outside the window. */
function equalDeflection(ask: Ask, bridge: Bridge, box: Box, R: Written, tap: number, random: Random): Written | undefined {
  const [low, high] = ask.window;
  const { bench, known, hands } = ask;
  const set = { known, R: boxResistance(reseat(box, bench, random), R), tap };
  const rheostat = rheostatFor(bridge, set, random.between(...BROUGHT_TO) * bridge.galvanometer.divisions);
  const l = readRest(equalDeflectionStretch(bridge, { ...set, rheostat }), bridge, bench, hands, random);
  return Number(l) >= low && Number(l) <= high ? l : undefined;
}
