import type { Block, Rows } from '../experiments/layout.ts';
import type { Program } from '../quantities/program.ts';
import type { Written } from '../quantities/step.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, formulaLine, quantityLine, symbolLine } from '../quantities/working.ts';
import { unit } from '../quantities/unit.ts';
import type { Sheet } from './sheet.ts';

/** A place for one value: what stands there, or nothing where the student writes. */
export interface Field {
  id: string;
  kind: 'read' | 'drawn' | 'worked';
  value?: Line;
}

export interface NamedField extends Field {
  symbol: Line;
  unit: Line;
  formula?: Line;
}

/** One block of the observations, ready for a template. */
export type RecordBlock =
  | {
      is: 'table';
      id: string;
      columns: { id: string; symbol: Line; unit: Line }[];
      /** The verdict that every row has a place for. */
      verdict?: string;
      rows: { label: RowLabel; fields: Field[]; choice?: string }[];
      after: NamedField[];
    }
  | { is: 'values'; fields: NamedField[] }
  /** The drawing is the page's, by the name of the graph. */
  | { is: 'graph'; id: string };

export type RowLabel = { number: number | string; direction?: 'a' | 'b' };

/** Which numbers are to be shown: those of a worksheet (readings alone) or of a key (all). */
export interface Shown {
  /** The written values of a quantity, one a row; nothing where the student has to find them. */
  values(id: string): Written[] | undefined;
  /** What a verdict says in each row; nothing where the student has to find it. */
  choices?(verdict: string): string[];
  /** Rows of each table. */
  rows(table: string): number;
  /** The reading is taken off a drawing. */
  drawn(id: string): boolean;
}

/**
 * A worksheet shows readings and givens, and what stands in a record to be corrected, but not what is read off a drawing. With `blank` readings it shows nothing:
 * the constants of a student's own screw gauge are as unknown here as what it will read. A table of given values stands on it all the same.
 */
export function readingsShown(program: Program, { readings, conventions, finished = {} }: Pick<Sheet, 'readings' | 'conventions' | 'finished'>, blank: boolean): Shown {
  const drawn = (id: string) => id in conventions.drawn;
  const column = (table: string) => program.steps.find((step) => (step.kind === 'reading' || step.kind === 'given') && step.per === table)!.id;
  const tabled = (id: string) => program.steps.some((step) => step.id === id && step.kind === 'given' && step.per !== undefined);
  return {
    drawn,
    values(id) {
      const written = readings[id] ?? finished[id];
      return written === undefined || drawn(id) || (blank && !tabled(id)) ? undefined : [written].flat();
    },
    rows: (table) => [readings[column(table)] ?? []].flat().length,
  };
}

/** Lays out the observations of a sheet; `bare` are the quantities whose formula stands elsewhere, or nowhere. */
export function record(blocks: Block[], program: Program, shown: Shown, words: SpokenWords, bare: readonly string[]): RecordBlock[] {
  const field = (id: string, row: number): Field => {
    const { kind, unit: unitName, per } = program.step(id);
    const written = shown.values(id)?.[row];
    const own: Field = { id, kind: kind === 'relation' || kind === 'summary' ? 'worked' : shown.drawn(id) ? 'drawn' : 'read' };
    return written === undefined ? own : { ...own, value: quantityLine(written, per ? '' : unitName, words) };
  };
  const named = (id: string): NamedField => {
    const step = program.step(id);
    const computed = step.kind === 'relation' || step.kind === 'summary';
    return {
      ...field(id, 0),
      symbol: symbolLine(program, id, words),
      unit: unitLine(step.unit, words),
      ...(computed && !bare.includes(id) ? { formula: formulaLine(program, step, words) } : {}),
    };
  };
  const choiceIn = (verdict: string | undefined, row: number) => {
    const choice = verdict === undefined ? undefined : shown.choices?.(verdict)[row];
    return choice === undefined ? {} : { choice };
  };
  return blocks.map((block): RecordBlock => {
    if ('graph' in block) return { is: 'graph', id: block.graph };
    if ('values' in block) return { is: 'values', fields: block.values.map(named) };
    return {
      is: 'table',
      id: block.table,
      ...(block.verdict !== undefined && { verdict: block.verdict }),
      columns: block.columns.map((id) => ({ id, symbol: symbolLine(program, id, words), unit: unitLine(program.step(id).unit, words) })),
      rows: Array.from({ length: shown.rows(block.table) }, (_, row) => ({
        label: rowLabel(block.rows, row),
        fields: block.columns.map((id) => field(id, row)),
        ...choiceIn(block.verdict, row),
      })),
      after: block.after.map(named),
    };
  });
}

/** A unit alone, as a table's heading or beside a blank. */
export function unitLine(name: string, words: SpokenWords): Line {
  return { tex: unit(name).tex, spoken: words.units[name] ?? name };
}

/** What a row of a table is called. */
export function labelIn(blocks: readonly Block[], table: string, row: number): RowLabel {
  const block = blocks.find((each) => 'table' in each && each.table === table);
  return rowLabel(block && 'table' in block ? block.rows : 'numbered', row);
}

/** What a row is called: its number, its letter, or a place and one of two directions. */
export function rowLabel(rows: Rows, row: number): RowLabel {
  switch (rows) {
    case 'numbered':
      return { number: row + 1 };
    case 'lettered':
      return { number: String.fromCodePoint('A'.codePointAt(0)! + row) };
    case 'pairs':
      return { number: Math.floor(row / 2) + 1, direction: row % 2 === 0 ? 'a' : 'b' };
  }
}
