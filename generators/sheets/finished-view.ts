import type { Layout } from '../experiments/layout.ts';
import { evaluate } from '../quantities/evaluate.ts';
import { type Fault, type Finished, faultsIn } from '../quantities/finished.ts';
import { type Program, program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Slip, Step } from '../quantities/step.ts';
import { unit } from '../quantities/unit.ts';
import { type Line, quantityLine, symbolLine } from '../quantities/working.ts';
import { type RowLabel, labelIn } from './record.ts';
import type { Sheet } from './sheet.ts';
import { type WorkedStep, resultLines, workedSteps } from './worked-steps.ts';
import type { Worked } from './worked.ts';

/** A sheet that holds a record to be corrected. */
type FinishedSheet = Sheet & { finished: Finished };

/** A finished record's working, with the formulas that were really used, and its result. */
export interface FinishedView {
  working: WorkedStep[];
  results: Record<string, Line>;
}

/** A mistake for the key: where it is, what stands there and what should. */
export interface FoundFault {
  symbol: Line;
  label?: RowLabel;
  wrote: Line;
  right: Line;
  slip: string;
}

export function finishedView(sheet: FinishedSheet, steps: Program, layout: Layout, words: SpokenWords): FinishedView {
  const { readings, conventions, finished } = sheet;
  const values = evaluate(steps, readings, conventions.ties, finished);
  const faults = faultsIn(steps, readings, conventions, finished);
  const by = (id: string, row: number) => {
    const fault = faults.find((each) => each.id === id && each.row === row);
    return fault ? withFault(steps, fault) : steps;
  };
  return { working: workedSteps(steps, layout, values, words, by), results: resultLines(steps, layout, values, words) };
}

/** The mistakes of a finished record, each with the value of the record that is right throughout. */
export function foundFaults({ readings, conventions, finished }: FinishedSheet, { program: steps, values }: Worked, { observations }: Layout, words: SpokenWords): FoundFault[] {
  return faultsIn(steps, readings, conventions, finished).map(({ id, row, slip }) => {
    const { per, unit: unitName } = steps.step(id);
    return {
      symbol: symbolLine(steps, id, words),
      ...(per !== undefined && { label: labelIn(observations, per, row) }),
      wrote: quantityLine(finished[id]![row]!, unitName, words),
      right: quantityLine(values.written.get(id)![row]!, unitName, words),
      slip,
    };
  });
}

/** The steps as the student took them: with the slip's formula, or with a quantity put in as it stands. */
function withFault(right: Program, { id, slip: name }: Fault): Program {
  const slip = slipOf(right, id, name);
  if (!slip) return right;
  return program(right.steps.map((step) => (slip.unconverted === undefined ? withFormula(step, id, slip) : unconverted(step, slip.unconverted))));
}

function slipOf(steps: Program, id: string, name: string): Slip | undefined {
  const step = steps.step(id);
  return step.kind === 'relation' ? step.slips?.find((slip) => slip.id === name) : undefined;
}

function withFormula(step: Step, id: string, { as }: Slip): Step {
  return step.id === id && step.kind === 'relation' ? { ...step, as, model: as, routes: [], slips: [] } : step;
}

/** A quantity whose number is taken as if it were in SI units already. */
function unconverted(step: Step, id: string): Step {
  return step.id === id && step.kind !== 'verdict' ? { ...step, unit: unit(step.unit).coherent } : step;
}
