import type { Experiment } from '../experiments/experiment.ts';
import { type Issue, programOf } from '../sheets/issue.ts';
import type { AnswerRow } from './answers-file.ts';
import { type SheetMarks, award } from './award.ts';
import type { Column } from './columns.ts';
import { judge } from './judge.ts';
import type { Scheme } from './scheme.ts';

/** A student's sheet, marked. */
export interface StudentMarks extends SheetMarks {
  issue: Issue;
  /** What was typed for each answer. */
  texts: string[];
  /** Nothing is entered: the student was away, or the sheet waits to be typed. */
  absent: boolean;
  /** Something is entered, and something is not. */
  incomplete: boolean;
}

/** Marks every sheet that was issued, in the order of the ledger. */
export function markClass(experiment: Experiment, issues: readonly Issue[], rows: readonly AnswerRow[], columns: readonly Column[], scheme: Scheme): StudentMarks[] {
  const rowOf = new Map(rows.map((row) => [row.issue, row]));
  return issues.map((issue) => {
    const row = rowOf.get(issue);
    const entries = row?.entries ?? columns.map(() => ({ is: 'not entered' as const }));
    const marks = award(judge(issue.sheet, programOf(experiment, issue.sheet), columns, entries), scheme);
    const open = entries.filter(({ is }) => is === 'not entered').length;
    return { ...marks, issue, texts: row?.texts ?? columns.map(() => ''), absent: open === entries.length, incomplete: open > 0 && open < entries.length };
  });
}
