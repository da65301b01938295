import { makeBox } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { nearestMark } from '../apparatus/decimal.ts';
import { within } from '../apparatus/draw.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { idealNull, middleThird } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import { bridgeHalfWidths } from './half-widths.ts';
import { observeNull } from './observe-bridge.ts';
import { withOneBox } from './on-bench.ts';
import { temperatureSteps } from './temperature-coefficient-steps.ts';
import { alphaValue, coilResistance, planCoil, settingsForAll } from './temperature-plan.ts';

/** Temperature coefficient of resistance of a coil in a water bath. */
export const temperatureCoefficient: Experiment = {
  id: 'temperature-coefficient',
  edition: 1,
  wires: 1,
  usual: {
    wires: [
      'copper, SWG 36, 500 cm', 'copper, SWG 38, 400 cm', 'copper, SWG 34, 800 cm', 'copper, SWG 40, 300 cm', 'copper, SWG 38, 550 cm',
      'iron, SWG 32, 200 cm', 'iron, SWG 34, 170 cm', 'iron, SWG 30, 350 cm', 'iron, SWG 36, 160 cm',
    ],
    rows: '6',
  },
  layout: {
    circuit: 'bridge',
    observations: [
      { values: ['R'] },
      { table: 'bath', columns: ['t', 'l', 'r', 'X'], after: [], rows: 'numbered' },
      { graph: 'bath', x: 't', y: 'X', slope: 'g', intercept: 'X0', fromZero: ['x'] },
    ],
    working: ['X', 'g', 'X0', 'alpha0', 'alphaRef', 'off'],
    result: ['X0', 'alpha0', 'alphaRef', 'off'],
    answers: ['g', 'X0', 'alpha0', 'alphaRef', 'off'],
    apart: ['X', 'X0'],
    uncertain: ['X0', 'alphaRef'],
    truths: [
      { id: 'X0', unit: 'Ω' },
      { id: 'alpha0', unit: '/°C' },
      { id: 'alphaRef', unit: '/°C' },
      { id: 'thermometerError', unit: '°C' },
      { id: 'endLeft', unit: 'cm' },
      { id: 'endRight', unit: 'cm' },
    ],
  },
  steps: (form) => temperatureSteps(form['known'] as KnownGap, form['reference']!),
  plan: planCoil,
  observe,
  bench(ask, streams, { X0, alpha0, thermometerError }) {
    const coil = { name: 'bath', ohms: ({ celsius }: { celsius: number }) => X0! * (1 + alpha0! * celsius) };
    const laid = withOneBox(ask, streams, [{ second: coil, taken: [{ firstIn: ask.known, reads: { R: 'box', t: 'thermometer', l: 'scale' } }] }]);
    return { ...laid, bath: { heated: ask.bench.bath.heated, thermometerError: thermometerError! } };
  },
  ideal(ask) {
    const { bridge, thermometer } = ask.bench;
    const { usable } = settingsForAll(ask);
    const { R } = usable[Math.floor(usable.length / 2)]!;
    const baths = temperatures(ask);
    const l = baths.map((celsius) => nearestMark(idealNull(ask.known, Number(R), coilResistance(ask.wire, celsius)), bridge.scaleDivision));
    return { form: formOf(ask), readings: { ...givens(ask), R, t: baths.map((celsius) => nearestMark(celsius, thermometer.division)), l } };
  },
  halfWidths: ({ bench }) => ({ ...bridgeHalfWidths(bench), thermometerError: { absolute: bench.thermometer.limitOfError } }),
};

/** Bath temperatures in °C, evenly from the coldest to the hottest. */
function temperatures({ rows, bench }: Ask): number[] {
  const [cold, hot] = bench.bath.heated;
  return Array.from({ length: rows }, (_, row) => cold + ((hot - cold) * row) / (rows - 1));
}

/** The table's α and its reference temperature; 0 °C where a wire without one is only planned, to be refused. */
const tableAlpha = ({ wire }: Ask) => alphaValue(wire)?.alpha ?? { value: '0', celsius: 0 };
const givens = (ask: Ask) => ({ W: '100.0', tRef: String(tableAlpha(ask).celsius), alphaTable: tableAlpha(ask).value });
const formOf = (ask: Ask) => ({ known: ask.known, reference: String(tableAlpha(ask).celsius) });

/** A bath seldom stops at a round number: it is read within 2 °C of what was aimed at. */
const AIM = 2;

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const { bench } = ask;
  const wire = makeWire(bench, ask.wire.made, ask.wire, streams.of('wire'));
  const bridge = makeBridge(bench, streams.of('bridge'));
  const box = makeBox(bench, streams.of('box'));
  const random = streams.of('null points');
  const thermometerError = within(bench.thermometer.limitOfError, streams.of('thermometer'));
  const { R } = random.pick(middleThird(settingsForAll(ask).usable));
  const [t, l]: [Written[], Written[]] = [[], []];
  for (const aim of temperatures(ask)) {
    const celsius = aim + within(AIM, random);
    const X = wireResistance(wire, celsius + bench.bath.lag * random.normal());
    const read = observeNull(ask, bridge, box, R, X, ask.known, random);
    if (read === undefined) return undefined;
    t.push(nearestMark(celsius + thermometerError, bench.thermometer.division));
    l.push(read);
  }
  const X0 = wireResistance(wire, 0);
  const perDegree = wireResistance(wire, 1) - X0;
  return {
    form: { ...formOf(ask), plugs: bench.box.plugs.join(' ') },
    readings: { ...givens(ask), R, t, l },
    truth: {
      X0,
      alpha0: perDegree / X0,
      alphaRef: perDegree / wireResistance(wire, tableAlpha(ask).celsius),
      thermometerError,
      endLeft: bridge.endCorrection.left,
      endRight: bridge.endCorrection.right,
    },
  };
}
