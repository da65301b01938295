import { round } from '../quantities/written.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import { idealNull, nominalResistance } from './bridge-plan.ts';
import type { KnownGap } from './bridge-steps.ts';
import { checkPlan } from './circuit-check-plan.ts';
import { circuitCheckSteps } from './circuit-check-steps.ts';
import { diagnoses } from './diagnosis.ts';
import type { Experiment, Observed } from './experiment.ts';
import { idealBridge } from './ideal.ts';
import { type Tried, clearCircuit } from './faulty-circuit.ts';

/** Is the circuit sound? Several circuits, each with its three deflections in the connection check, to be diagnosed. */
export const circuitCheck: Experiment = {
  id: 'circuit-check',
  edition: 1,
  wires: 1,
  usual: { wires: ['constantan, SWG 28, 60 cm', 'manganin, SWG 30, 55 cm', 'nichrome, SWG 26, 75 cm', 'constantan, SWG 26, 80 cm'], rows: '6' },
  readingsGiven: true,
  layout: {
    circuit: 'bridge',
    observations: [{ values: ['X'] }, { table: 'circuits', columns: ['R', 'place', 'left', 'middle', 'right'], verdict: 'diagnosis', after: [], rows: 'lettered' }],
    working: ['place'],
    result: [],
    answers: ['place'],
    apart: [],
    uncertain: [],
    truths: [],
  },
  steps: (form) => circuitCheckSteps(form['known'] as KnownGap, [Number(form['low']), Number(form['high'])]),
  plan: checkPlan,
  observe,
  ideal(ask) {
    const { R } = idealBridge(ask);
    const at = (divisions: string) => [R!].flat().map(() => divisions);
    return { form: formOf(ask), readings: { W: '100', X: aboutX(ask), R: R!, left: at('-15.0'), middle: at('0.0'), right: at('15.0') } };
  },
  halfWidths: () => ({}),
};

const formOf = ({ known, window: [low, high] }: Ask) => ({ known, low: String(low), high: String(high) });

/** The resistance that the circuits are told to have, to two figures. */
const aboutX = ({ wire }: Ask) => round(nominalResistance(wire), { figures: 2 }, 'even');

/** A sound circuit and others, each with something else the matter, in any order. */
function observe(ask: Ask, streams: Streams): Observed | undefined {
  const random = streams.of('circuits');
  const X = aboutX(ask);
  const others = random.shuffle(diagnoses.filter((each) => each !== 'sound')).slice(0, ask.rows - 1);
  const circuits = random.shuffle(['sound' as const, ...others]).map((wanted) =>
    clearCircuit(ask, wanted, (R) => idealNull(ask.known, Number(R), Number(X)), random),
  );
  if (circuits.includes(undefined)) return undefined;
  const column = (id: keyof Tried) => (circuits as Tried[]).map((tried) => tried[id]);
  return {
    form: formOf(ask),
    readings: { W: '100', X, R: column('R'), left: column('left'), middle: column('middle'), right: column('right') },
    truth: {},
  };
}
