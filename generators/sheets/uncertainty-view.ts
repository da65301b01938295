import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, quantityLine, symbolLine } from '../quantities/working.ts';
import { round } from '../quantities/written.ts';
import { roughly, withUncertainty } from './rough.ts';
import { errorNumbers, errorRule } from './error-rule.ts';
import type { Worked } from './worked.ts';

/** The worst case of one result, as a key prints it. */
export interface WorstView {
  id: string;
  /** 'Δρ/ρ = ΔX/X + 2Δd/d + ΔL/L', where the textbook rule holds. */
  rule?: Line;
  /** The rule with the numbers of the first row put in, where the rule holds. */
  numbers?: Line;
  /** The row of those numbers; none where the result has one value a sheet. */
  row?: number;
  /** The result with its error, and the error as a percentage, which says nothing of a difference that may be zero. */
  value: Line;
  error: Line;
  percent?: Line;
}

/** One line of an uncertainty budget. */
export interface BudgetRow {
  source: string;
  part: Line;
  freedom: string;
}

export interface StandardView {
  id: string;
  symbol: Line;
  rows: BudgetRow[];
  u: Line;
  freedom: string;
  t: string;
  /** The result with its 95 % interval. */
  interval: Line;
}

export function worstView(worked: Worked, id: string, words: SpokenWords): WorstView {
  const { unit } = worked.program.step(id);
  const [cell] = worked.cells(id);
  const error = worked.worst(id);
  const step = worked.program.step(id);
  const nearZero = step.kind === 'relation' && worked.program.compiled(id).as.expression.is === 'difference';
  const rule = nearZero ? undefined : errorRule(worked.program, id, words);
  return {
    id,
    ...(rule ? { rule, numbers: errorNumbers(worked, id, words) } : {}),
    ...(step.kind === 'summary' ? { row: 1 } : {}),
    value: quantityLine(cell!.shown, unit, words),
    error: roughly(error, unit, words, 2),
    ...(nearZero ? {} : { percent: roughly((100 * error) / Math.abs(cell!.exact), '%', words, 2) }),
  };
}

export function standardView(worked: Worked, id: string, words: SpokenWords): StandardView {
  const { unit } = worked.program.step(id);
  const budget = worked.budget(id);
  // What cancels out of a result is no part of it.
  const largestFirst = budget.contributions.filter(({ part }) => Math.abs(part) > 1e-9 * budget.u).toSorted((a, b) => Math.abs(b.part) - Math.abs(a.part));
  return {
    id,
    symbol: symbolLine(worked.program, id, words),
    rows: largestFirst.map(({ source, part, freedom }) => ({ source, part: roughly(Math.abs(part), unit, words, 2), freedom: whole(freedom) })),
    u: roughly(budget.u, unit, words, 2),
    freedom: whole(budget.freedom),
    t: round(budget.t, { decimals: 2 }, 'even'),
    interval: withUncertainty(worked.cells(id)[0]!.exact, budget.expanded, unit, words),
  };
}

/** Beyond a hundred they make no difference to t. */
const whole = (freedom: number) => (freedom === Infinity ? '∞' : freedom > 100 ? '> 100' : String(Math.floor(freedom)));
