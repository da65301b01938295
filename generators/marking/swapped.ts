import type { Mistake } from '../mistake.ts';
import type { Program } from '../quantities/program.ts';
import type { AnswerRow } from './answers-file.ts';
import type { Column } from './columns.ts';
import { ownFigures } from './judge.ts';
import { type Work, reach, within } from './reach.ts';

/** So many rows show whether columns are swapped, and so few are no proof. */
const MOST_ROWS = 40;
const FEWEST_ROWS = 3;

/** Two columns whose values fit each other's answers and not their own, in more than half of the rows that have both. */
export function swappedColumns(rows: readonly AnswerRow[], columns: readonly Column[], nameOf: (column: Column) => string, programFor: (row: AnswerRow) => Program): Mistake[] {
  const looked = rows.slice(0, MOST_ROWS).map((row) => fits(row, columns, programFor(row)));
  return columns.flatMap((one, a) =>
    columns.slice(a + 1).flatMap((other, i): Mistake[] => {
      const b = a + 1 + i;
      const both = looked.filter((fit) => fit[a]![a] !== undefined && fit[b]![b] !== undefined);
      const swapped = both.filter((fit) => fit[a]![b] && fit[b]![a] && !fit[a]![a] && !fit[b]![b]).length;
      if (swapped < FEWEST_ROWS || 2 * swapped <= both.length) return [];
      return [{ what: `the columns ${nameOf(one)} and ${nameOf(other)} look swapped: in ${swapped} of ${both.length} rows each value fits the other's answer; change over the two heads` }];
    }),
  );
}

/** Whether the value in one column would be right in another, on the key; undefined where there is none. */
function fits({ issue: { sheet }, entries }: AnswerRow, columns: readonly Column[], program: Program): (boolean | undefined)[][] {
  const own = ownFigures(columns, entries);
  const work: Work = { sheet, program, own: {} };
  const ranges = reach(work);
  const right = columns.map(({ id, row }) => ranges.get(id)![row]!);
  return columns.map(({ id, row }) => {
    const written = own[id]?.[row];
    return right.map((range) => (written === undefined ? undefined : within(Number(written), range)));
  });
}
