import type { Layout } from '../experiments/layout.ts';
import type { Column } from '../marking/columns.ts';
import type { Program } from '../quantities/program.ts';
import { decimalsOf, parts } from '../quantities/written.ts';
import type { Sheet } from '../sheets/sheet.ts';

/** A place where the student writes a value. */
export interface Place extends Column {
  /** 'X:0', by which the page knows it. */
  key: string;
  /** Worked out, or taken off a drawing. */
  kind: 'worked' | 'drawn';
  /** Any number of figures is as good, so long as the value is accepted. */
  anyFigures?: true;
  /** A help that nobody need fill in. */
  optional?: true;
}

export const placeKey = (id: string, row: number) => `${id}:${row}`;

const NO_MARKS = { method: 0, answer: 0, unit: 0, figures: 0 };

/** Every place of a sheet's record and working, in the order of the steps, so that what a value is worked from comes first. */
export function placesOf(program: Program, layout: Layout, sheet: Sheet): Place[] {
  const shown = new Set(shownOf(layout));
  return program.steps.flatMap((step) => {
    if (!shown.has(step.id) || step.kind === 'verdict' || step.kind === 'given' || step.kind === 'influence') return [];
    const drawn = step.kind === 'reading';
    if (drawn && !(step.id in sheet.conventions.drawn)) return [];
    const written = drawn ? [sheet.readings[step.id]!].flat() : [];
    const count = drawn ? written.length : step.per === undefined ? 1 : rowsIn(program, step.per, sheet);
    const digits = drawn ? { decimals: decimalsOf(parts(written[0]!)[0]) } : step.digits;
    const common = { id: step.id, inTable: step.per !== undefined, unit: step.unit, digits, marks: NO_MARKS, kind: drawn ? ('drawn' as const) : ('worked' as const) };
    return Array.from({ length: count }, (_, row) => ({ ...common, row, key: placeKey(step.id, row) }));
  });
}

/** Quantities that the record and the working of a layout show. */
export function shownOf({ observations, working }: Layout): string[] {
  const blocks = observations.flatMap((block) => ('table' in block ? [...block.columns, ...block.after] : 'values' in block ? block.values : [block.slope, block.intercept].filter((id) => id !== undefined)));
  return [...new Set([...blocks, ...working])];
}

function rowsIn(program: Program, table: string, { readings }: Sheet): number {
  const column = program.steps.find((step) => (step.kind === 'reading' || step.kind === 'given') && step.per === table)!;
  return [readings[column.id]!].flat().length;
}
