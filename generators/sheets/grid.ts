import type { Experiment } from '../experiments/experiment.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Line } from '../quantities/working.ts';
import { type AnswerRow, answerRow } from './answers.ts';
import { type Issue, programOf } from './issue.ts';
import type { RowLabel } from './record.ts';
import { workOut } from './worked.ts';

/** The whole class's deciding answers on as few pages as can be. */
export interface GridPage {
  template: 'grid';
  foot: string;
  columns: { symbol: Line; label?: RowLabel }[];
  rows: { roll: string; name: string; code: string; wire: string; answers: AnswerRow[] }[];
}

/** One column for each answer, and one for each row of an answer that stands in a table. */
export function gridPage(issues: readonly Issue[], experiment: Experiment, words: SpokenWords): GridPage {
  const { layout } = experiment;
  const rows = issues.map(({ roll, name, code, wires, sheet }) => {
    const worked = workOut(sheet, programOf(experiment, sheet));
    return { roll, name, code, wire: wires.join('; '), answers: layout.answers.flatMap((id) => worked.cells(id).map((_, row) => answerRow(worked, layout, id, row, words))) };
  });
  return { template: 'grid', foot: '', columns: rows[0]!.answers.map(({ symbol, label }) => ({ symbol, ...(label && { label }) })), rows };
}
