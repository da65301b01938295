import type { Experiment } from '../experiments/experiment.ts';
import { UserMistake } from '../mistake.ts';
import type { Digits } from '../quantities/step.ts';
import { programOf } from '../sheets/issue.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { type Marks, type Scheme, listedAnswers } from './scheme.ts';

/** One deciding answer: a column of the answers file. */
export interface Column {
  id: string;
  /** From 0; 0 for an answer that is no table's. */
  row: number;
  /** Whether it is one of a table's rows. */
  inTable: boolean;
  unit: string;
  digits: Digits;
  marks: Marks;
}

/**
 * The deciding answers of a class's sheets, in the order of the steps, so that a student's earlier figures come first.
 * @throws UserMistake where the scheme names what the experiment has not
 */
export function columnsOf(scheme: Scheme, experiment: Experiment, sheets: readonly Sheet[]): Column[] {
  const { steps } = programOf(experiment, sheets[0]!);
  const columns = listedAnswers(scheme, experiment.id, experiment.layout.answers).flatMap(({ step: id, rows, marks }): Column[] => {
    const step = steps.find((each) => each.id === id);
    if (step?.kind !== 'relation' && step?.kind !== 'summary') throw new UserMistake(`the mark scheme "${scheme.title}" lists ${id}, which is no answer of ${experiment.id}; it has ${experiment.layout.working.join(', ')}`);
    const common = { id, unit: step.unit, digits: step.digits, marks: step.unit === '' ? { ...marks, unit: 0 } : marks };
    if (step.per === undefined) return [{ ...common, row: 0, inTable: false }];
    const most = Math.max(...sheets.map((sheet) => rowsOf(steps, step.per!, sheet)));
    return (rows ?? Array.from({ length: most }, (_, i) => i + 1)).map((row) => ({ ...common, row: row - 1, inTable: true }));
  });
  const place = ({ id }: Column) => steps.findIndex((step) => step.id === id);
  return columns.sort((a, b) => place(a) - place(b) || a.row - b.row);
}

function rowsOf(steps: ReturnType<typeof programOf>['steps'], table: string, { readings }: Sheet): number {
  const column = steps.find((step) => (step.kind === 'reading' || step.kind === 'given') && step.per === table);
  return column ? [readings[column.id] ?? []].flat().length : 0;
}

/** What all answers of a sheet are worth together. */
export function fullMarks(columns: readonly Column[]): number {
  return columns.reduce((sum, { marks }) => sum + marks.method + marks.answer + marks.unit + marks.figures, 0);
}
