import type { Step } from '../quantities/step.ts';
import type { KnownGap } from './bridge-steps.ts';
import { diagnosis } from './diagnosis.ts';

/** Where each circuit should balance, its three deflections, and what they say. */
export function circuitCheckSteps(known: KnownGap, window: readonly [low: number, high: number]): Step[] {
  const [own, other] = known === 'left' ? ['R', 'X'] : ['X', 'R'];
  const deflection = (id: string, below: string): Step => ({ kind: 'reading', id, tex: `\\theta_{\\mathrm{${below}}}`, unit: '', per: 'circuits', on: 'galvanometer' });
  return [
    { kind: 'given', id: 'W', tex: '100', unit: 'cm' },
    { kind: 'given', id: 'X', tex: 'X', unit: 'Ω' },
    { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'circuits', on: 'box' },
    {
      kind: 'relation',
      id: 'place',
      tex: 'l_{0}',
      unit: 'cm',
      per: 'circuits',
      as: `W * ${own} / (R + X)`,
      digits: { decimals: 0 },
      slips: [{ id: 'the other gap', as: `W * ${other} / (R + X)` }],
    },
    deflection('left', 'L'),
    deflection('middle', '0'),
    deflection('right', 'R'),
    diagnosis(window),
  ];
}
