import type { Readings } from '../quantities/evaluate.ts';
import type { Finished } from '../quantities/finished.ts';
import type { Limit } from '../quantities/uncertainty.ts';
import type { Ties } from '../quantities/written.ts';

/** How the numbers of a sheet are worked and judged; printed on it, so that nobody has to guess. */
export interface Conventions {
  ties: Ties;
  /** Four-figure logarithm tables are allowed. */
  tables: boolean;
  /** How far a reading taken off a drawing may lie from the truth, by reading, in its unit. */
  drawn: Record<string, number>;
  /** Maximum permissible errors of the readings, for the worst case. */
  limits: Record<string, Limit>;
  /** Half-widths of what is known only within limits, for the standard uncertainty. */
  halfWidths: Record<string, Limit>;
}

/** What the student may see, whole and plain: it survives JSON, and everything on worksheet and key is made from it. */
export interface Sheet {
  format: 1;
  /** Goes up when the same seed would make other numbers. */
  edition: number;
  experiment: string;
  origin: 'generated' | 'measured';
  /** Plain choices that decide which steps stand: which gap is known, on which side of zero the gauge stands. */
  form: Record<string, string>;
  /** Readings and givens as printed; a table's readings are lists, one entry a row. */
  readings: Readings;
  conventions: Conventions;
  /** What an imaginary student wrote for every step that is worked out, where the sheet is a record to be corrected. */
  finished?: Finished | undefined;
}
