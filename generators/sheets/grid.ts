import type { Experiment } from '../experiments/experiment.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, symbolLine } from '../quantities/working.ts';
import { type AnswerRow, answerRow } from './answers.ts';
import { type Issue, programOf } from './issue.ts';
import { workOut } from './worked.ts';

/** The whole class's deciding answers on as few pages as can be. */
export interface GridPage {
  template: 'grid';
  foot: string;
  columns: Line[];
  rows: { roll: string; name: string; code: string; wire: string; answers: AnswerRow[] }[];
}

export function gridPage(issues: readonly Issue[], experiment: Experiment, words: SpokenWords): GridPage {
  const ids = experiment.layout.answers;
  const program = programOf(experiment, issues[0]!.sheet);
  return {
    template: 'grid',
    foot: '',
    columns: ids.map((id) => symbolLine(program, id, words)),
    rows: issues.map(({ roll, name, code, wires, sheet }) => {
      const worked = workOut(sheet, programOf(experiment, sheet));
      return { roll, name, code, wire: wires.join('; '), answers: ids.map((id) => answerRow(worked, id, 0, words)) };
    }),
  };
}
