import type { Step } from '../quantities/step.ts';
import { type KnownGap, bridgeSteps } from './bridge-steps.ts';
import { overLength } from './resistivity-steps.ts';
import { type ZeroError, screwGaugeSteps } from './screw-gauge-steps.ts';

/** Resistivity of an unlabelled wire, and which materials of a table it can be. */
export function whichMaterialSteps(known: KnownGap, zero: ZeroError): Step[] {
  return [
    ...bridgeSteps(known),
    ...screwGaugeSteps(zero),
    ...overLength,
    { kind: 'given', id: 'rhoTable', tex: '\\rho_{\\mathrm{t}}', unit: 'Ω m', per: 'candidates' },
    {
      kind: 'verdict',
      id: 'fits',
      per: 'candidates',
      choices: ['fits', 'excluded'],
      decide: ({ value, worst }) => (fits(value('rho'), value('rhoTable'), worst('rho')) ? 'fits' : 'excluded'),
    },
    {
      kind: 'verdict',
      id: 'named',
      choices: ['one', 'several', 'none'],
      decide({ value, rows, worst }) {
        const left = rows('rhoTable').filter((table) => fits(value('rho'), table, worst('rho'))).length;
        return left === 0 ? 'none' : left === 1 ? 'one' : 'several';
      },
    },
  ];
}

/** Materials whose table value lies within the maximum permissible error of the measured one cannot be told apart by it. */
const fits = (measured: number, table: number, error: number) => Math.abs(measured - table) <= error;
