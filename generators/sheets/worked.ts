import { acceptRanges } from '../quantities/accept.ts';
import { type Own, type Values, evaluate } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval, Verdict, Written } from '../quantities/step.ts';
import { type Budget, type Sensitivities, sensitivities, standardUncertainty, worstCase } from '../quantities/uncertainty.ts';
import type { Sheet } from './sheet.ts';

/** One value of a key. */
export interface Cell {
  /** Worked without rounding on the way. */
  exact: number;
  /** As the key shows it. */
  shown: Written;
  /** Every value that honest work can give. */
  accept: Interval;
}

/** A sheet worked out from its printed readings. */
export interface Worked {
  program: Program;
  values: Values;
  /** One cell a row; a scalar has one. */
  cells(id: string): Cell[];
  /** Maximum permissible error, in the quantity's unit. */
  worst(id: string, row?: number): number;
  /** Standard uncertainty of a quantity that has one value a sheet. */
  budget(id: string): Budget;
  /** The choice of each verdict; one for every row where it belongs to a table. */
  verdicts(): Record<string, string[]>;
}

/** Works a sheet on its printed readings; with a student's own values, goes on from those (error carried forward). */
export function workOut(sheet: Sheet, program: Program, own: Own = {}): Worked {
  const { ties, limits, halfWidths } = sheet.conventions;
  const values = evaluate(program, sheet.readings, ties, own);
  // Ranges and gradients take most of the work, and not everyone who works a sheet asks for them.
  let known: Map<string, Interval[]> | undefined;
  const ranges = () => (known ??= acceptRanges(program, sheet.readings, sheet.conventions, own));
  let found: Sensitivities | undefined;
  const gradients = () => (found ??= sensitivities(program, values));
  const worst = (id: string, row = 0) => worstCase(gradients().of(id, row), values, limits);
  const budget = (id: string) => standardUncertainty(gradients().of(id), gradients().scatters, values, halfWidths);
  return {
    program,
    values,
    cells: (id) => values.written.get(id)!.map((shown, row) => ({ shown, exact: values.exact.get(id)![row]!, accept: ranges().get(id)![row]! })),
    worst,
    budget,
    verdicts: () => verdicts(program, values, worst, (id) => budget(id).expanded),
  };
}

function verdicts(program: Program, values: Values, worst: (id: string, row: number) => number, expanded: (id: string) => number): Record<string, string[]> {
  const rows = (id: string) => values.exact.get(id)!;
  const inRow = (id: string, row: number) => rows(id)[rows(id).length === 1 ? 0 : row]!;
  const choiceOf = (step: Verdict, row: number) => {
    const choice = step.decide({ rows, value: (id) => inRow(id, row), worst: (id) => worst(id, rows(id).length === 1 ? 0 : row), expanded });
    if (!step.choices.includes(choice)) throw new Error(`${step.id}: "${choice}" is not one of its choices`);
    return choice;
  };
  const length = ({ per }: Verdict) => {
    const column = per && program.steps.find((step) => (step.kind === 'reading' || step.kind === 'given') && step.per === per);
    return column ? rows(column.id).length : 1;
  };
  const all = program.steps.filter((step) => step.kind === 'verdict');
  return Object.fromEntries(all.map((step) => [step.id, Array.from({ length: length(step) }, (_, row) => choiceOf(step, row))]));
}
