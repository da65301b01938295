import { type Latitude, acceptRanges } from './accept.ts';
import { type Readings, type Values, at, evaluate, formulaValue } from './evaluate.ts';
import type { Program } from './program.ts';
import type { Computed, Digits, Slip, Written } from './step.ts';
import { type Ties, decimalsOf, parts, round } from './written.ts';

/** What somebody wrote for every step that is worked out, one value a row. */
export type Finished = Record<string, Written[]>;

/** A mistake in a finished record, at the step and row (from 0) where it was made; what follows from it is no mistake. */
export interface Fault {
  id: string;
  row: number;
  /** A slip of the step; else a value that no listed slip gives, or one with more digits than it can carry. */
  slip: Slip['id'] | (typeof WRITING)[number];
}

/** Mistakes of writing and reckoning, which any step can suffer. */
export const WRITING = ['arithmetic', 'too many digits'] as const;

/** Figures beyond those asked for that nobody carries along but for show; common practice, no source. */
const FOR_SHOW = 3;

/** The mistakes in a finished record. Each value is judged on the record's own figures above it. */
export function faultsIn(program: Program, readings: Readings, latitude: Latitude, finished: Finished): Fault[] {
  const values = evaluate(program, readings, 'even', finished);
  const ranges = acceptRanges(program, readings, latitude, finished);
  return program.steps.filter(isComputed).flatMap((step) =>
    finished[step.id]!.flatMap((written, row): Fault[] => {
      const [low, high] = ranges.get(step.id)![row]!;
      const isRight = Number(written) >= low && Number(written) <= high;
      if (isRight) return extraDigits(written, step.digits) >= FOR_SHOW ? [{ id: step.id, row, slip: 'too many digits' }] : [];
      return [{ id: step.id, row, slip: slipBehind(program, step, row, values) ?? 'arithmetic' }];
    }),
  );
}

const isComputed = (step: Program['steps'][number]): step is Computed => step.kind === 'relation' || step.kind === 'summary';

/** The slip of a relation that gives the value that stands in this row. */
function slipBehind(program: Program, step: Computed, row: number, values: Values): string | undefined {
  if (step.kind === 'summary') return undefined;
  const written = values.written.get(step.id)![row]!;
  const gives = (ties: Ties, value: number) => round(value, step.digits, ties) === written;
  return program.compiled(step.id).slips.find(({ as }) => {
    const value = formulaValue(program, step, as, (id) => Number(at(values.written.get(id)!, row)));
    return Number.isFinite(value) && (gives('even', value) || gives('up', value));
  })?.id;
}

function extraDigits(written: Written, digits: Digits): number {
  const [mantissa] = parts(written);
  const given = 'decimals' in digits ? decimalsOf(mantissa) : mantissa.replace(/\D/g, '').replace(/^0+/, '').length;
  return given - ('decimals' in digits ? digits.decimals : digits.figures);
}
