import { type Own, type Readings, at, scale, tensInto } from './evaluate.ts';
import type { Formula } from './formula.ts';
import { byEye } from './by-eye.ts';
import { byFourFigureTables } from './four-figure.ts';
import { hull, point } from './interval.ts';
import type { Program } from './program.ts';
import type { Computed, Digits, Interval, Relation, Summary, Written } from './step.ts';
import { roundings } from './roundings.ts';
import { summaryMethods, summaryRange } from './summary.ts';
import { unit } from './unit.ts';
import { halfUnit, round } from './written.ts';

/** What counts as honest work besides rounding. */
export interface Latitude {
  /** Four-figure logarithm tables are allowed. */
  tables: boolean;
  /** How far a reading taken off a drawing may lie from the printed truth, in its own unit. */
  drawn: Record<string, number>;
  /** The same of readings that nobody knows: what follows may be worked from any reading in the latitude. */
  unread?: Record<string, number>;
}

/**
 * For each step the values that honest work reaches: every permitted rounding at every step before,
 * every listed route, and the student's own values where they are given (error carried forward).
 */
export function acceptRanges(program: Program, readings: Readings, latitude: Latitude, own: Own = {}): Map<string, Interval[]> {
  return honestWork(program, readings, latitude, own).ranges;
}

/** The same, and beside it what students go on from at each step: the latitude of a drawing or of a line by eye is spent there, and a value of their own takes its place. */
export function honestWork(program: Program, readings: Readings, latitude: Latitude, own: Own = {}): Record<'ranges' | 'carried', Map<string, Interval[]>> {
  const ranges = new Map<string, Interval[]>();
  const carried = new Map<string, Interval[]>();
  const rows = new Map<string, number>();
  for (const step of program.steps) {
    if (step.kind === 'verdict' || step.kind === 'influence') continue;
    const mine = own[step.id] ?? [];
    if (step.kind === 'reading' || step.kind === 'given') {
      const read = [readings[step.id] ?? []].flat();
      if (read.length === 0) throw new Error(`no reading ${step.id}`);
      if (step.per) rows.set(step.per, read.length);
      ranges.set(step.id, read.map((value) => around(Number(value), latitude.drawn[step.id] ?? 0)));
      // What follows is judged on the reading that was taken, where that is known; the latitude is spent at the reading itself.
      const slack = latitude.unread?.[step.id] ?? 0;
      carried.set(step.id, read.map((value, row) => (mine[row] === undefined ? around(Number(value), slack) : point(Number(mine[row])))));
      continue;
    }
    const reach = computedRanges(program, step, carried, step.per ? rows.get(step.per)! : 1, latitude);
    // As with a reading off a drawing, the latitude of a line by eye is spent at the line itself.
    ranges.set(step.id, step.kind === 'summary' && step.byEye ? [aboutLine(step, reach[0]!, carried)] : reach);
    carried.set(step.id, goesOnFrom(step, reach, mine));
  }
  return { ranges, carried };
}

/** Every value of a line that a student may have laid by eye. */
function aboutLine({ by, of, digits }: Summary, [low, high]: Interval, carried: Map<string, Interval[]>): Interval {
  const slack = byEye(by, of.map((id) => carried.get(id)!.map(([from, to]) => (from + to) / 2)));
  return roundings([low - slack, high + slack], digits);
}

const around = (value: number, slack: number): Interval => [value - slack, value + slack];

/** What a student with these written values goes on from, one a row. */
function goesOnFrom(step: Computed, reach: Interval[], own: (Written | undefined)[]): Interval[] {
  const rounds = reach.some(([low, high]) => high - low > NOISE * Math.abs(high));
  return reach.map((range, row) => {
    const written = own[row];
    if (written === undefined) return range;
    return rounds ? unrounded(written, step.digits, range) : point(Number(written));
  });
}

/** What computing in binary leaves between two ends that are equal. */
const NOISE = 1e-12;
const SHORT_OF_A_TIE = 1 - 1e-9;

/** Who writes 2.63 may go on with 2.63, or with the 2.6296 still in the calculator; a right value stays inside its range. */
function unrounded(written: Written, digits: Digits, [low, high]: Interval): Interval {
  const value = Number(written);
  const [from, to] = around(value, SHORT_OF_A_TIE * Math.min(halfUnit(written), halfUnit(round(value, digits, 'even'))));
  return low <= value && value <= high ? [Math.max(low, from), Math.min(high, to)] : [from, to];
}

function computedRanges(program: Program, step: Computed, carried: Map<string, Interval[]>, rows: number, latitude: Latitude): Interval[] {
  if (step.kind === 'summary') {
    const range = summaryRange(summaryMethods[step.by], step.of.map((id) => carried.get(id)!));
    return [roundings(range, step.digits)];
  }
  return Array.from({ length: rows }, (_, row) => relationRange(program, step, (id) => at(carried.get(id)!, row), latitude));
}

function relationRange(program: Program, relation: Relation, carried: (id: string) => Interval, latitude: Latitude): Interval {
  const compiled = program.compiled(relation.id);
  const into = (id: string) => scaled(carried(id), tensInto(program, relation, id));
  const reach = (formula: Formula, value: (id: string) => Interval) => {
    const range = formula.range(formula.names.map(value));
    return latitude.tables ? byFourFigureTables(range, formula.expression) : range;
  };
  const ends = [reach(compiled.as, into)];
  for (const route of compiled.routes) {
    const lines = new Map<string, Interval>();
    const value = (id: string) => lines.get(id) ?? into(id);
    for (const line of route.via) lines.set(line.id, roundings(reach(line.as, value), line.digits));
    ends.push(reach(route.as, value));
  }
  return roundings(scaled(hull(...ends), relation.si ? -unit(relation.unit).tens : 0), relation.digits);
}

function scaled([low, high]: Interval, tens: number): Interval {
  return [scale(low, tens), scale(high, tens)];
}
