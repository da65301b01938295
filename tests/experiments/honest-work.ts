import { expect } from 'vitest';
import type { Experiment, Observed } from '../../generators/experiments/experiment.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import type { Digits } from '../../generators/quantities/step.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { anyStudent, extremeStudent } from '../quantities/student.ts';
import type { BenchSet } from './bench-sets.ts';

export const three: Digits = { figures: 3 };
export const hundredths: Digits = { decimals: 2 };

/** Notes values to their digits, under a name, and gives what the student goes on with. */
export type Note = (id: string, values: number[], digits: Digits) => number[];

export const meanOf = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/**
 * Works every set by hand as three students do, one who rounds anyhow and two who always round down or up, and expects
 * each value that they note inside its accept range.
 */
export function expectHonestWorkAccepted(experiment: Experiment, sets: readonly BenchSet[], work: (observed: Observed, note: Note) => void): void {
  for (const [i, { observed }] of sets.entries()) {
    const ranges = acceptRanges(programOf(experiment, observed), observed.readings, { tables: false, drawn: {} });
    for (const student of [anyStudent(streams('honest').of(i)), extremeStudent('lowest', 'diameter'), extremeStudent('highest', 'diameter')])
      work(observed, (id, values, digits) =>
        values.map((value, row) => {
          const written = student.keep(value, digits);
          const [low, high] = ranges.get(id)![row]!;
          const noise = 1e-9 * Math.max(1, Math.abs(value));
          expect(written, `${id}, row ${row + 1}`).toBeGreaterThanOrEqual(low - noise);
          expect(written, `${id}, row ${row + 1}`).toBeLessThanOrEqual(high + noise);
          return student.carry(value, written, digits);
        }),
      );
  }
}
