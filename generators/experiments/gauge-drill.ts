import type { Bench } from '../apparatus/bench.ts';
import { type ScrewGauge, makeScrewGauge, readGauge, readZero } from '../apparatus/screw-gauge.ts';
import { acrossAt, makeWire } from '../apparatus/wire.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Random, Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import type { Experiment, Observed } from './experiment.ts';
import { gaugeDrillSteps } from './gauge-drill-steps.ts';
import { idealGauge } from './ideal.ts';
import { zeroSides } from './observe-diameter.ts';
import type { ZeroError } from './screw-gauge-steps.ts';

/** Thicknesses in mm, so thick that the half-millimetre line counts; and one thicker rod a gauge. Common practice, no source. */
const WIRES = [0.5, 3] as const;
const RODS = [3, 6] as const;

/** So many divisions from a full turn at least: nearer, nobody can say from a drawing whether the next mark is uncovered. */
const FROM_MARK = 2;

/** Zero errors of so many divisions at least: smaller ones, a reading wrong by one division hides whether their sign was minded. */
const LEAST_ZERO_ERROR = 3;

/** Two screw gauges with zero errors of opposite signs; the student's wire is the first piece under gauge P, all others are drawn by lot. */
export const gaugeDrill: Experiment = {
  id: 'gauge-drill',
  edition: 2,
  wires: 1,
  usual: {
    wires: ['copper, SWG 18, 30 cm', 'copper, 1.6 mm, 30 cm', 'constantan, SWG 20, 30 cm', 'constantan, 1.4 mm, 30 cm', 'nichrome, SWG 19, 30 cm', 'aluminium, 2.0 mm, 30 cm'],
    rows: '3',
    drawn: 'gauge',
  },
  layout: {
    observations: [
      { values: ['pitch', 'N', 'LC'] },
      { values: ['n0P', 'eP'] },
      { table: 'gaugeP', columns: ['msrP', 'nP', 'csrP', 'dObsP', 'dP'], after: [], rows: 'lettered' },
      { values: ['n0Q', 'eQ'] },
      { table: 'gaugeQ', columns: ['msrQ', 'nQ', 'csrQ', 'dObsQ', 'dQ'], after: [], rows: 'lettered' },
    ],
    decided: ['P', 'Q'].map((name) => ({ choice: `zero${name}`, by: `n0${name}`, formula: `e${name}`, cases: ['positive', 'negative'] satisfies ZeroError[] })),
    working: ['LC', 'dP', 'dQ'],
    result: [],
    answers: ['eP', 'dP', 'eQ', 'dQ'],
    apart: ['dQ'],
    uncertain: [],
    truths: [
      { id: 'zeroErrorP', unit: 'mm' },
      { id: 'zeroErrorQ', unit: 'mm' },
    ],
  },
  steps: (form) => gaugeDrillSteps(form['zeroP'] as ZeroError, form['zeroQ'] as ZeroError),
  plan: ({ bench }) => ({ balances: [], unfit: lacksASign(bench) }),
  observe,
  ideal(ask) {
    const { pitch, N, n0, msr, n } = idealGauge(ask);
    return { form: { zeroP: 'none', zeroQ: 'none' }, readings: { pitch: pitch!, N: N!, n0P: n0!, msrP: msr!, nP: n!, n0Q: n0!, msrQ: msr!, nQ: n! } };
  },
  halfWidths: () => ({}),
};

function lacksASign(bench: Bench): string[] {
  const lacking = (['positive', 'negative'] as const).filter((sign) => withSign(bench, sign).screwGauge.zeroErrors.length === 0);
  return lacking.map((sign) => `the table of the apparatus has no ${sign} zero error of the screw gauge of ${LEAST_ZERO_ERROR} divisions or more; add one to zeroErrors under screwGauge`);
}

/** The bench with those of its screw gauges whose zero error has this sign and is large enough. */
function withSign(bench: Bench, sign: 'positive' | 'negative'): Bench {
  const { pitch, divisions } = bench.screwGauge;
  const inDivisions = (error: string) => Math.round((Number(error) * divisions) / Number(pitch));
  const zeroErrors = bench.screwGauge.zeroErrors.filter((error) => (sign === 'positive' ? 1 : -1) * inDivisions(error) >= LEAST_ZERO_ERROR);
  return { ...bench, screwGauge: { ...bench.screwGauge, zeroErrors } };
}

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const random = streams.of('screw gauges');
  const [P, Q] = random.shuffle(['positive', 'negative'] as const).map((sign) => makeScrewGauge(withSign(ask.bench, sign), random)) as [ScrewGauge, ScrewGauge];
  const wire = makeWire(ask.bench, ask.wire.made, ask.wire, streams.of('wire'));
  const across = acrossAt(wire, streams.of('directions'))[0];
  const p = readPieces(ask, P, 'P', [across, ...pieces(ask.rows - 1, random)], random);
  const q = readPieces(ask, Q, 'Q', pieces(ask.rows, random), random);
  if (!p.isPlain || !q.isPlain) return undefined;
  return {
    form: { zeroP: p.zero, zeroQ: q.zero },
    readings: { pitch: P.pitch, N: String(P.divisions), ...p.readings, ...q.readings },
    truth: { zeroErrorP: P.zeroOffset, zeroErrorQ: Q.zeroOffset },
  };
}

/** Diameters in mm of so many pieces, one of them a rod, in any order. */
function pieces(count: number, random: Random): number[] {
  const wires = Array.from({ length: count - 1 }, () => random.between(...WIRES));
  return random.shuffle([random.between(...RODS), ...wires]);
}

function readPieces({ bench, hands }: Ask, gauge: ScrewGauge, name: string, diameters: readonly number[], random: Random): { zero: ZeroError; readings: Readings; isPlain: boolean } {
  const { zero, division } = readZero(gauge);
  const rows = diameters.map((diameter) => readGauge(gauge, bench, diameter, hands, random));
  return {
    isPlain: rows.every((row) => row.division >= FROM_MARK && row.division <= gauge.divisions - FROM_MARK),
    zero: zeroSides[zero],
    readings: { [`n0${name}`]: String(division), [`msr${name}`]: rows.map(({ main }) => main), [`n${name}`]: rows.map((row) => String(row.division)) },
  };
}
