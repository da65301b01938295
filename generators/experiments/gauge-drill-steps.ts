import type { Step } from '../quantities/step.ts';
import { type ZeroError, correctionSlips, gaugeReadings, leastCount } from './screw-gauge-steps.ts';

/** The least count, and for each of two gauges its zero error and a table of diameters, corrected one by one. */
export function gaugeDrillSteps(zeroP: ZeroError, zeroQ: ZeroError): Step[] {
  return [...leastCount, ...gaugeReadings(zeroP, 'P'), corrected('P'), ...gaugeReadings(zeroQ, 'Q'), corrected('Q')];
}

function corrected(name: string): Step {
  const [observed, error] = [`dObs${name}`, `e${name}`];
  return {
    kind: 'relation',
    id: `d${name}`,
    tex: `d_{\\mathrm{${name}}}`,
    unit: 'mm',
    per: `gauge${name}`,
    as: `${observed} - ${error}`,
    digits: { decimals: 2 },
    slips: correctionSlips(observed, error),
  };
}
