import type { Experiment } from '../experiments/experiment.ts';
import type { Layout, Rows } from '../experiments/layout.ts';
import { UserMistake } from '../mistake.ts';
import type { Computed, Digits, Step } from '../quantities/step.ts';
import { programOf } from '../sheets/issue.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { rowsIn } from './rows.ts';
import { type Marks, type Scheme, listedAnswers } from './scheme.ts';

/** One deciding answer: a column of the answers file. */
export interface Column {
  id: string;
  /** From 0; 0 for an answer that is no table's. */
  row: number;
  /** Whether it is one of a table's rows. */
  inTable: boolean;
  /** What the rows are called of the table that it stands in, or that it is the mean or the line of; numbered where it is left out. */
  rows?: Rows;
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
  const computed = (id: string) => steps.find((each) => each.id === id && (each.kind === 'relation' || each.kind === 'summary'));
  const columns = listedAnswers(scheme, experiment.id, experiment.layout.answers.filter(computed)).flatMap(({ step: id, rows, marks }): Column[] => {
    const step = computed(id);
    if (step?.kind !== 'relation' && step?.kind !== 'summary') throw new UserMistake(`the mark scheme "${scheme.title}" lists ${id}, which is no answer of ${experiment.id}; it has ${experiment.layout.working.join(', ')}`);
    const common = { id, unit: step.unit, digits: step.digits, marks: step.unit === '' ? { ...marks, unit: 0 } : marks, ...rowsOf(step, experiment.layout, steps) };
    if (step.per === undefined) return [{ ...common, row: 0, inTable: false }];
    const most = Math.max(...sheets.map((sheet) => rowsIn({ steps }, step.per!, sheet.readings)));
    return Array.from({ length: most }, (_, i) => i + 1).filter((row) => rows?.includes(row) ?? true).map((row) => ({ ...common, row: row - 1, inTable: true }));
  });
  const place = ({ id }: Column) => steps.findIndex((step) => step.id === id);
  return columns.sort((a, b) => place(a) - place(b) || a.row - b.row);
}

/** What rows are called that an answer is one of, or is worked from. */
export function rowsOf(step: Computed, { observations }: Pick<Layout, 'observations'>, steps: readonly Step[]): Pick<Column, 'rows'> {
  const source = step.kind === 'summary' ? steps.find(({ id }) => id === step.of[0]) : step;
  const block = observations.find((each) => 'table' in each && source !== undefined && 'per' in source && each.table === source.per);
  return block && 'rows' in block ? { rows: block.rows } : {};
}

/** What all answers of a sheet are worth together. */
export function fullMarks(columns: readonly Column[]): number {
  return columns.reduce((sum, { marks }) => sum + marks.method + marks.answer + marks.unit + marks.figures, 0);
}
