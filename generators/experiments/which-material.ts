import { round, scientific } from '../quantities/written.ts';
import type { Ask } from './ask.ts';
import type { KnownGap } from './bridge-steps.ts';
import type { Experiment, Observed } from './experiment.ts';
import type { Plan } from './plan.ts';
import { resistivity } from './resistivity.ts';
import type { ZeroError } from './screw-gauge-steps.ts';
import { whichMaterialSteps } from './which-material-steps.ts';

/** Between a cold and a warm room the resistivity may change by one per cent at most, or the table's value does not hold; common practice, no source. */
const MOST_CHANGE = 0.01;

/** What an unlabelled wire is made of, by its resistivity. */
export const whichMaterial: Experiment = {
  id: 'which-material',
  edition: 1,
  wires: 1,
  usual: {
    wires: [
      'constantan, SWG 28, 60 cm', 'constantan, SWG 30, 70 cm', 'constantan, SWG 26, 90 cm', 'manganin, SWG 28, 90 cm', 'manganin, SWG 30, 55 cm',
      'manganin, SWG 26, 100 cm', 'nichrome, SWG 26, 75 cm', 'nichrome, SWG 24, 90 cm', 'nichrome, SWG 28, 65 cm',
    ],
  },
  layout: {
    ...resistivity.layout,
    observations: [...resistivity.layout.observations, { table: 'candidates', columns: ['rhoTable'], verdict: 'fits', after: [], rows: 'lettered' }],
    working: ['X', 'meanX', 'meanD', 'd', 'rho'],
    result: ['rho'],
    answers: ['meanX', 'e', 'd', 'rho'],
    uncertain: ['meanX', 'rho'],
  },
  steps: (form) => whichMaterialSteps(form['known'] as KnownGap, form['zero'] as ZeroError),
  plan: (ask) => ({ ...resistivity.plan(ask), unfit: tooWarm(ask) }),
  observe(ask, streams) {
    const observed = resistivity.observe(ask, streams);
    return observed && { ...observed, ...withCandidates(ask, observed) };
  },
  ideal: (ask) => withCandidates(ask, resistivity.ideal(ask)),
  bench: resistivity.bench!,
  halfWidths: resistivity.halfWidths,
};

/** The same readings beside the whole table in place of the wire's own value; the form names its rows. */
function withCandidates({ candidates }: Ask, { form, readings }: Pick<Observed, 'form' | 'readings'>): Pick<Observed, 'form' | 'readings'> {
  return {
    form: { ...form, candidates: candidates.map(({ material }) => material).join(', ') },
    readings: { ...readings, rhoTable: candidates.map(({ rho }) => scientific(rho)) },
  };
}

/** A metal whose resistivity goes with the temperature of the room cannot be looked up in a table for another. */
function tooWarm({ wire, bench }: Ask): Plan['unfit'] {
  const { material, alpha } = wire.made;
  const away = Math.max(...bench.room.map((celsius) => Math.abs(celsius - wire.accepted.celsius)));
  const change = Math.abs(Number(alpha?.value ?? 0)) * away;
  if (change <= MOST_CHANGE) return [];
  return [
    `the resistivity of ${material} may lie ${round(100 * change, { decimals: 1 }, 'even')} % from the table's value for ${wire.accepted.celsius} °C, since the room may be ${bench.room[0]} to ${bench.room[1]} °C; it would be taken for another material. Take an alloy, such as constantan, manganin or nichrome`,
  ];
}
