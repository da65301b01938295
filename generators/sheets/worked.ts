import { acceptRanges } from '../quantities/accept.ts';
import { type Own, type Values, evaluate } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval, Written } from '../quantities/step.ts';
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
  verdicts(): Record<string, string>;
}

/** Works a sheet on its printed readings; with a student's own values, goes on from those (error carried forward). */
export function workOut(sheet: Sheet, program: Program, own: Own = {}): Worked {
  const { ties, limits, halfWidths } = sheet.conventions;
  const values = evaluate(program, sheet.readings, ties, own);
  const ranges = acceptRanges(program, sheet.readings, sheet.conventions, own);
  // Gradients are asked for by keys alone; a class is kept apart without them.
  let known: Sensitivities | undefined;
  const gradients = () => (known ??= sensitivities(program, values));
  const worst = (id: string, row = 0) => worstCase(gradients().of(id, row), values, limits);
  return {
    program,
    values,
    cells: (id) => values.written.get(id)!.map((shown, row) => ({ shown, exact: values.exact.get(id)![row]!, accept: ranges.get(id)![row]! })),
    worst,
    budget: (id) => standardUncertainty(gradients().of(id), gradients().scatters, values, halfWidths),
    verdicts: () => verdicts(program, values, worst),
  };
}

function verdicts(program: Program, values: Values, worst: (id: string) => number): Record<string, string> {
  const rows = (id: string) => values.exact.get(id)!;
  const on = { rows, value: (id: string) => rows(id)[0]!, worst };
  return Object.fromEntries(
    program.steps.flatMap((step) => {
      if (step.kind !== 'verdict') return [];
      const choice = step.decide(on);
      if (!step.choices.includes(choice)) throw new Error(`${step.id}: "${choice}" is not one of its choices`);
      return [[step.id, choice]];
    }),
  );
}
