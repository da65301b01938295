import type { Layout } from '../experiments/layout.ts';
import type { Values } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Computed } from '../quantities/step.ts';
import { type Line, conversionLines, formulaLine, quantityLine, workedLine } from '../quantities/working.ts';
import { brokenSum } from './broken-sum.ts';
import { type RowLabel, labelIn } from './record.ts';

/** A step of the working: its formula, and the lines with numbers for each row. */
export interface WorkedStep {
  id: string;
  rows: { label?: RowLabel; lines: Line[] }[];
  formula: Line;
}

/** The working of a layout on these values, each row by the steps that `by` gives for it. */
export function workedSteps(program: Program, layout: Layout, values: Values, words: SpokenWords, by: (id: string, row: number) => Program = () => program): WorkedStep[] {
  return layout.working.map((id) => {
    const { per } = program.step(id);
    const rows = values.written.get(id)!.map((_, row) => ({
      ...(per === undefined ? {} : { label: labelIn(layout.observations, per, row) }),
      lines: linesOf(by(id, row), id, row, values, words),
    }));
    return { id, rows, formula: formulaLine(program, computedStep(program, id), words) };
  });
}

function linesOf(program: Program, id: string, row: number, values: Values, words: SpokenWords): Line[] {
  const step = computedStep(program, id);
  const conversions = step.kind === 'relation' && !step.per ? conversionLines(program, step, values, words) : [];
  return [...conversions, brokenSum(workedLine(program, step, row, values, words))];
}

/** What the result states, as it is written. */
export function resultLines(program: Program, layout: Layout, values: Values, words: SpokenWords): Record<string, Line> {
  return Object.fromEntries(layout.result.map((id) => [id, quantityLine(values.written.get(id)![0]!, program.step(id).unit, words)]));
}

/** The step of that id, which has a working; another is a mistake of the program. */
export function computedStep(program: Program, id: string): Computed {
  const step = program.step(id);
  if (step.kind !== 'relation' && step.kind !== 'summary') throw new Error(`${id} is not worked out, so it has no working`);
  return step;
}
