import type { Column } from './columns.ts';
import { openSteps } from './catalogue.ts';
import { type Work, exactly, reach, reachOf } from './reach.ts';
import { slipped, slipsOf } from './slipped.ts';
import type { Program } from '../quantities/program.ts';
import type { Sheet } from '../sheets/sheet.ts';

/** A slip that gives an accepted value on a sheet, so that nobody can see it there. */
export interface Coincidence {
  column: Pick<Column, 'id' | 'row' | 'inTable' | 'rows'>;
  at: string;
  slip: string;
}

/** The slips of the catalogue whose values, however they are rounded, can lie inside an answer's accept range. */
export function coincidences(sheet: Sheet, program: Program, columns: readonly Coincidence['column'][]): Coincidence[] {
  const work: Work = { sheet, program, own: {} };
  const ranges = reach(work);
  // A slip is looked for in the first answer that it can show in; later answers are judged on that one.
  const seen = new Set<string>();
  return columns.flatMap((column): Coincidence[] => {
    const open = openSteps(work, column.id).filter((id) => id === column.id || !seen.has(id));
    for (const id of open) if (id !== column.id || !column.inTable) seen.add(id);
    const [low, high] = ranges.get(column.id)![column.row]!;
    return open.flatMap((at) =>
      slipsOf(program.step(at)).flatMap((slip): Coincidence[] => {
        const wrong: Work = { ...work, program: slipped(program, [{ at, slip }]) };
        const value = exactly(wrong, column.id).get(column.id)![column.row]!;
        if (!(Math.abs(value - exactly(work, column.id).get(column.id)![column.row]!) <= 3 * (high - low) + 0.02 * Math.abs(value))) return [];
        const [least, greatest] = reachOf(wrong, column.id)[column.row]!;
        return least <= high && greatest >= low ? [{ column, at, slip: slip.id }] : [];
      }),
    );
  });
}
