import type { Bench, Hands } from '../apparatus/bench.ts';
import type { Ask } from '../experiments/ask.ts';
import type { Layout } from '../experiments/layout.ts';
import { fitLine } from '../quantities/summary.ts';
import type { Instrument, Reading, Summary } from '../quantities/step.ts';
import type { Limit } from '../quantities/uncertainty.ts';
import { byInstrument } from './conventions.ts';
import type { Sheet } from './sheet.ts';
import { workOut, type Worked } from './worked.ts';
import type { Program } from '../quantities/program.ts';

/** Something about readings that were really taken which asks for a second look. */
export type Doubt =
  /** A null point outside the window. */
  | { about: 'window'; id: string; row: number }
  /** A row whose value lies farther from the others than hands explain. */
  | { about: 'row'; id: string; row: number };

/** So many standard deviations are beyond what hands explain: 1 row in 370 of a normal distribution. */
const BEYOND = 3;
/** A row and the middle of the others are both uncertain: that middle, of three rows or more, by two thirds of a row at most. */
const BOTH = 1.2;
/** With fewer rows nobody can say which of them does not fit. */
const FEWEST = 3;

/** What to look at again in a sheet of readings that were really taken. */
export function doubts(sheet: Sheet, program: Program, { offWindow = [] }: Pick<Layout, 'offWindow'>, { bench, hands, window }: Pick<Ask, 'bench' | 'hands' | 'window'>): Doubt[] {
  const readings = program.steps.filter((step) => step.kind === 'reading');
  const limits = byInstrument(readings, beyondHands(bench, hands));
  const worked = workOut({ ...sheet, conventions: { ...sheet.conventions, limits } }, program);
  return [
    ...readings.filter(({ id }) => !offWindow.includes(id)).flatMap((reading) => outside(reading, worked, window)),
    ...program.steps.filter((step) => step.kind === 'summary').flatMap((summary) => straying(summary, worked)),
  ];
}

/** How far hands and instrument may put one reading off. */
function beyondHands({ hands, box, bridge, screwGauge }: Bench, which: Hands): Partial<Record<Instrument, Limit>> {
  const { jockey, parallax, screwGauge: closing, rule } = hands[which];
  const division = Number(bridge.scaleDivision);
  const leastCount = Number(screwGauge.pitch) / screwGauge.divisions;
  return {
    scale: { absolute: BEYOND * Math.sqrt(jockey * jockey + parallax * parallax) + division / 2 },
    box: { fraction: box.tolerance },
    'circular scale': { absolute: (BEYOND * closing) / leastCount + 1 },
    rule: { absolute: BEYOND * rule },
    thermometer: { absolute: 1 },
  };
}

function outside({ id, on }: Reading, { values }: Worked, [low, high]: readonly [number, number]): Doubt[] {
  if (on !== 'scale') return [];
  return values.exact.get(id)!.flatMap((l, row) => (l < low || l > high ? [{ about: 'window' as const, id, row }] : []));
}

/** Rows of a mean's column far from the middle of the others, and points far from the line through the others. */
function straying({ by, of }: Summary, worked: Worked): Doubt[] {
  if (by === 'intercept') return [];
  const id = of.at(-1)!;
  const column = (name: string) => worked.values.exact.get(name)!;
  const values = column(id);
  const others = (row: number) => values.map((_, i) => i).filter((i) => i !== row);
  const expected = (row: number) => (by === 'mean' ? median(others(row).map((i) => values[i]!)) : onLine(others(row), column(of[0]!), values, column(of[0]!)[row]!));
  if (values.length < (by === 'mean' ? FEWEST : FEWEST + 1)) return [];
  const strays = values.map((value, row) => Math.abs(value - expected(row)) / (BOTH * worked.worst(id, row)));
  // One wrong row moves what the others are held against, so only the one that strays most is named.
  const worst = strays.indexOf(Math.max(...strays));
  return strays[worst]! > 1 ? [{ about: 'row', id, row: worst }] : [];
}

function onLine(rows: readonly number[], x: readonly number[], y: readonly number[], at: number): number {
  const { slope, intercept } = fitLine(rows.map((i) => x[i]!), rows.map((i) => y[i]!));
  return slope * at + intercept;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2;
}
