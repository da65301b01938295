import type { Experiment } from '../experiments/experiment.ts';
import type { Layout } from '../experiments/layout.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Line } from '../quantities/working.ts';
import { type AnswerRow, answerRow } from './answers.ts';
import { type Issue, programOf } from './issue.ts';
import { type RowLabel, rowLabel } from './record.ts';
import { type Worked, workOut } from './worked.ts';

/** The whole class's deciding answers on as few pages as can be. */
export interface GridPage {
  template: 'grid';
  foot: string;
  columns: { symbol: Line; label?: RowLabel }[];
  /** The verdicts that end the rows of a table: one column for each row. */
  verdicts: { verdict: string; label: RowLabel }[];
  rows: { roll: string; name: string; code: string; wire: string; answers: AnswerRow[]; choices: string[] }[];
}

/** One column for each answer, and one for each row of an answer or verdict that stands in a table. */
export function gridPage(issues: readonly Issue[], experiment: Experiment, words: SpokenWords): GridPage {
  const { layout } = experiment;
  const all = issues.map(({ sheet }) => workOut(sheet, programOf(experiment, sheet)));
  const answers = all.map((worked) => layout.answers.flatMap((id) => worked.cells(id).map((_, row) => answerRow(worked, layout, id, row, words))));
  const said = all.map((worked) => verdictsInTables(worked, layout));
  return {
    template: 'grid',
    foot: '',
    columns: answers[0]!.map(({ symbol, label }) => ({ symbol, ...(label && { label }) })),
    verdicts: said[0]!.map(({ verdict, label }) => ({ verdict, label })),
    rows: issues.map(({ roll, name, code, wires }, i) => ({ roll, name, code, wire: wires.join('; '), answers: answers[i]!, choices: said[i]!.map(({ choice }) => choice) })),
  };
}

function verdictsInTables(worked: Worked, { observations }: Layout): { verdict: string; label: RowLabel; choice: string }[] {
  const tables = observations.flatMap((block) => ('table' in block && block.verdict !== undefined ? [{ verdict: block.verdict, rows: block.rows }] : []));
  const said = tables.length === 0 ? {} : worked.verdicts();
  return tables.flatMap(({ verdict, rows }) => said[verdict]!.map((choice, row) => ({ verdict, label: rowLabel(rows, row), choice })));
}
