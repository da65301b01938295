import type { Experiment } from '../experiments/experiment.ts';
import type { Mistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import type { ReadingColumn } from '../order/reading-columns.ts';
import { quote } from '../order/quote.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Reading, Step, Written } from '../quantities/step.ts';
import { faultOnInstrument } from './instrument-marks.ts';

/** What a column of an experiment is called: by its symbol as it can be typed, or in words. */
export interface ColumnNames {
  /** Names in words, by quantity: 'length of the wire between the terminals'. */
  values: Readonly<Record<string, string>>;
}

/** What was typed, by quantity, as numbers of the engine; choices that a reading decides stand beside. */
export interface Typed {
  readings: Readings;
  choices: Record<string, string>;
  /** The row of the file in which each value stands. */
  rows: Record<string, number[]>;
}

type Wanted = Extract<Step, { kind: 'reading' | 'given' }>;

/** 'd_{\\mathrm{obs}}' as it can be typed: 'd_obs'. */
const plain = (tex: string) => tex.replace(/\\mathrm|\\overline|[{}\\]/g, '');

const simple = (text: string) => text.normalize('NFKC').toLowerCase().replace(/[\s_.]+/g, ' ').trim();

/** A head may carry its unit: 'l / cm', 'l (cm)'. */
const withoutUnit = (head: string) => head.replace(/\s*(?:\/.*|\(.*\)|\[.*\])$/, '').trim();
const unitIn = (head: string) => /(?:\/\s*|\(|\[)([^)\]]*)[)\]]?$/.exec(head)?.[1]?.trim();

/** The quantity that a head names; a letter counts as written, since l and L, n and N are different things. */
export function quantityOf(head: string, steps: readonly Step[], { values }: ColumnNames): string | undefined {
  const name = withoutUnit(head);
  const wanted = steps.filter(isWanted);
  return (wanted.find(({ id, tex }) => name === id || name === plain(tex)) ?? wanted.find(({ id }) => simple(values[id] ?? '') === simple(name) || (id.length > 1 && simple(id) === simple(name))))?.id;
}

export const isWanted = (step: Step): step is Wanted => step.kind === 'reading' || step.kind === 'given';

/** The values in the columns, each fit for its instrument; or everything that is wrong with them. */
export function typedIn(columns: readonly ReadingColumn[], experiment: Experiment, steps: readonly Step[], names: ColumnNames, known: Readings): { typed: Typed } | { mistakes: Mistake[] } {
  const decided = experiment.layout.decided ?? [];
  const typed: Typed = { readings: { ...known }, choices: {}, rows: {} };
  const mistakes: Mistake[] = [];
  for (const { head, cells } of columns) {
    const choice = decided.find(({ choice }) => simple(choice) === simple(head));
    if (choice) {
      const [first] = cells;
      if (first && !choice.cases.includes(simple(first.text))) mistakes.push({ row: first.row, field: head, what: `${quote(first.text)} is none of ${choice.cases.join(', ')}` });
      else if (first) typed.choices[choice.choice] = simple(first.text);
      continue;
    }
    const id = quantityOf(head, steps, names);
    const step = steps.filter(isWanted).find((each) => each.id === id);
    if (!step) {
      mistakes.push({ row: 1, field: quote(head), what: `no reading of this experiment is called so${didYouMean(head, wantedNames(steps)) || `; its columns are ${wantedNames(steps).join(', ')}`}` });
      continue;
    }
    mistakes.push(...readColumn(step, head, cells, typed));
  }
  mistakes.push(...lacking(experiment, steps, typed));
  if (mistakes.length > 0) return { mistakes };
  const marks = steps.filter(isReading).flatMap((step) => offItsMarks(step, typed));
  return marks.length > 0 ? { mistakes: marks } : { typed };
}

const isReading = (step: Step): step is Reading => step.kind === 'reading';
const wantedNames = (steps: readonly Step[]) => steps.filter(isReading).map(({ id }) => id);

function readColumn(step: Wanted, head: string, cells: ReadingColumn['cells'], typed: Typed): Mistake[] {
  const unit = unitIn(head);
  const mistakes: Mistake[] = [];
  if (step.id in typed.rows) mistakes.push({ row: 1, field: quote(head), what: `${step.id} stands in two columns; keep one of them` });
  if (unit !== undefined && simple(unit) !== simple(step.unit)) mistakes.push({ row: 1, field: quote(head), what: `is in ${unit}, where the record has ${step.id} in ${step.unit || 'plain numbers'}; convert the column` });
  if (step.per === undefined && cells.length > 1) mistakes.push({ row: cells[1]!.row, field: step.id, what: `one value a record, but here is a second; keep one` });
  const values = cells.map(({ text, row }) => {
    const value = decimal(text);
    if (value === undefined) mistakes.push({ row, field: step.id, what: `${quote(text)} is no number; write it as 43.2` });
    return value ?? '0';
  });
  typed.rows[step.id] = cells.map(({ row }) => row);
  if (cells.length > 0) typed.readings[step.id] = step.per === undefined ? values[0]! : values;
  return mistakes;
}

/** A plain decimal with a point or a comma. */
function decimal(text: string): Written | undefined {
  const value = text.replace(',', '.').replace(/^[−–]/, '-');
  return /^-?\d+(\.\d+)?$/.test(value) ? value : undefined;
}

/** What is not there: readings, rows of a table that others have, and the side of a zero that is off. */
function lacking({ layout }: Experiment, steps: readonly Step[], { readings, choices, rows }: Typed): Mistake[] {
  const absent = steps.filter(isReading).filter(({ id }) => (rows[id] ?? []).length === 0);
  const tables = [...new Set(steps.filter(isReading).flatMap(({ per }) => (per === undefined ? [] : [per])))];
  return [
    ...absent.map(({ id }) => ({ field: id, what: 'has no value; give a column of that name' })),
    ...tables.flatMap((table) => unequal(steps.filter(isReading).filter(({ per, id }) => per === table && (rows[id] ?? []).length > 0), rows)),
    ...(layout.decided ?? [])
      .filter(({ choice, by }) => choices[choice] === undefined && readings[by] !== undefined && Number(readings[by]) !== 0)
      .map(({ choice, by, cases }) => ({ field: choice, what: `${by} is not zero; say which it is in a column ${choice}: ${cases.join(' or ')}` })),
  ];
}

const FEWEST_ROWS = 2;

function unequal(columns: readonly Reading[], rows: Typed['rows']): Mistake[] {
  const counts = columns.map(({ id }) => rows[id]!.length);
  const [first] = columns;
  if (first && Math.max(...counts) < FEWEST_ROWS) return [{ field: first.id, what: 'one row makes no table; give two or more' }];
  return columns.filter((_, i) => counts[i] !== Math.max(...counts)).map(({ id }) => ({ field: id, what: `has ${rows[id]!.length} values where another column of its table has ${Math.max(...counts)}; fill the gap, or delete the row` }));
}

function offItsMarks(step: Reading, typed: Typed): Mistake[] {
  return [typed.readings[step.id]!].flat().flatMap((value, i) => {
    const what = faultOnInstrument(step.on, value, typed.readings);
    return what === undefined ? [] : [{ row: typed.rows[step.id]![i]!, field: step.id, what: `${quote(value)} ${what}` }];
  });
}
