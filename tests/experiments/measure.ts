import type { Ask } from '../../generators/experiments/ask.ts';
import type { Observed } from '../../generators/experiments/experiment.ts';
import { resistivity } from '../../generators/experiments/resistivity.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { programOf } from '../../generators/sheets/issue.ts';

/** A result beside the truth that it was simulated from. */
export interface Result {
  /** (value − truth) ÷ truth. */
  off: number;
  /** The truth lies in the stated 95 % interval. */
  covered: boolean;
}

/** What one set of readings comes to, unrounded. */
export interface Measurement {
  /** X of each row, Ω. */
  rows: number[];
  meanX: Result;
  rho: Result;
}

export function measure(ask: Ask, observed: Observed): Measurement {
  const program = programOf(resistivity, observed);
  const values = evaluate(program, observed.readings, 'even');
  const { of, scatters } = sensitivities(program, values);
  const halfWidths = resistivity.halfWidths(ask);
  const result = (id: string, truth: number): Result => {
    const [value] = values.exact.get(id)! as [number];
    const { expanded } = standardUncertainty(of(id), scatters, values, halfWidths);
    return { off: value / truth - 1, covered: Math.abs(value - truth) <= expanded };
  };
  const { X, rho } = observed.truth as { X: number; rho: number };
  return { rows: values.exact.get('X')!, meanX: result('meanX', X), rho: result('rho', rho) };
}
