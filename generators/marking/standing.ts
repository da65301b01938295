import type { Program } from '../quantities/program.ts';
import type { Sheet } from '../sheets/sheet.ts';
import type { Judged, Verdict } from './judge.ts';
import { type Work, reach, within } from './reach.ts';

/** How an answer stands, in one word for the teacher. */
export type Standing =
  | 'right'
  /** Right on the student's own earlier figures, of which one is wrong. */
  | 'carried forward'
  | 'right by the key'
  | 'wrong'
  | 'unreadable'
  | 'not entered'
  | 'left blank'
  | 'struck out';

/** How each answer of a sheet stands; what is right and none of the key's values follows from a wrong one. */
export function standings(sheet: Sheet, program: Program, answers: readonly Judged[]): Standing[] {
  const key: Work = { sheet, program, own: {} };
  const ranges = reach(key);
  return answers.map(({ entry, verdict, value, column: { id, row } }): Standing => {
    if (entry.is !== 'number') return entry.is;
    if (verdict !== 'right') return verdict as Exclude<Verdict, 'right' | 'absent'>;
    return within(Number(value), ranges.get(id)![row]!) ? 'right' : 'carried forward';
  });
}
