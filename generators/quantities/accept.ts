import { type Own, type Readings, at, evaluate, scale, tensInto } from './evaluate.ts';
import type { Formula } from './formula.ts';
import { hull, point } from './interval.ts';
import type { Program } from './program.ts';
import type { Computed, Digits, Interval, Relation } from './step.ts';
import { summaryMethods, summaryRange } from './summary.ts';
import { unit } from './unit.ts';
import { type Ties, round } from './written.ts';

/** What counts as honest work besides rounding. */
export interface Latitude {
  /** Four-figure logarithm tables are allowed. */
  tables: boolean;
  /** How far a reading taken off a drawing may lie from the printed truth, in its own unit. */
  drawn: Record<string, number>;
}

/** More figures than stated may always be kept; four more already lie within any stated range. */
const EXTRA_FIGURES = 4;

/**
 * For each step the values that honest work reaches: every permitted rounding at every step before,
 * every listed route, and the student's own values where they are given (error carried forward).
 */
export function acceptRanges(program: Program, readings: Readings, latitude: Latitude, own: Own = {}): Map<string, Interval[]> {
  const ranges = new Map<string, Interval[]>();
  const carried = new Map<string, Interval[]>();
  const { written } = evaluate(program, readings, 'even', {});
  for (const step of program.steps) {
    if (step.kind === 'verdict' || step.kind === 'influence') continue;
    const reach =
      step.kind === 'reading' || step.kind === 'given'
        ? written.get(step.id)!.map((value) => around(Number(value), latitude.drawn[step.id] ?? 0))
        : computedRanges(program, step, carried, written.get(step.id)!.length, latitude);
    const mine = own[step.id] ?? [];
    ranges.set(step.id, reach);
    carried.set(step.id, reach.map((range, row) => (mine[row] === undefined ? range : point(Number(mine[row])))));
  }
  return ranges;
}

const around = (value: number, slack: number): Interval => [value - slack, value + slack];

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
    return latitude.tables ? byTables(range, formula) : range;
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

/** All that rounding to the stated digits, or to more, makes of an interval; rounding keeps order, so the ends suffice. */
function roundings([low, high]: Interval, digits: Digits): Interval {
  const ends = (value: number) => [value, ...ties.flatMap((tie) => finer(digits).map((d) => Number(round(value, d, tie))))];
  if (!Number.isFinite(low) || !Number.isFinite(high)) return [low, high];
  return [Math.min(...ends(low)), Math.max(...ends(high))];
}

const ties: Ties[] = ['even', 'up'];

function finer(digits: Digits): Digits[] {
  return Array.from({ length: EXTRA_FIGURES + 1 }, (_, more) =>
    'decimals' in digits ? { decimals: digits.decimals + more } : { figures: digits.figures + more },
  );
}

/** A four-figure logarithm is within half a unit of its fourth place, which is 1.15 parts in ten thousand of the number. */
const LOGARITHM = 1.15e-4;
/** The antilogarithm is written with four figures: at worst half a unit in 1000. */
const ANTILOGARITHM = 5e-4;

/** An outer bound for work by four-figure tables: one logarithm for each factor and one for the answer. */
function byTables([low, high]: Interval, { names }: Formula): Interval {
  if (names.length < 2) return [low, high];
  const slack = Math.max(Math.abs(low), Math.abs(high)) * (LOGARITHM * (names.length + 2) + ANTILOGARITHM);
  return [low - slack, high + slack];
}
