import type { Own } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval, Written } from '../quantities/step.ts';
import { shift } from '../quantities/written.ts';
import type { Sheet } from '../sheets/sheet.ts';
import type { Column } from './columns.ts';
import type { Entry, NumberEntry } from './entry.ts';
import { explain } from './explain.ts';
import { lastPlace, statedPlace } from './last-place.ts';
import { type Work, exactly, reach, reachOf, within } from './reach.ts';
import type { Explanation } from './slip.ts';
import { type Made, slipped, slipsOf } from './slipped.ts';
import { type StatedUnit, readUnit } from './stated-unit.ts';

/** How a value stands to what honest work gives. */
export type Verdict =
  /** Follows from the readings and the student's own earlier figures; or is the key's, without following from those. */
  | 'right'
  | 'right by the key'
  | 'wrong'
  /** There is no value. */
  | 'absent';

/** One answer with all that is known about it. */
export interface Judged {
  column: Column;
  entry: Entry;
  verdict: Verdict;
  /** In the unit of the step, digits kept. */
  value?: Written;
  /** What is accepted on the student's own earlier figures, and what they come to without rounding. */
  accept: Interval;
  expected: number;
  /** Why a wrong value came about, where something explains it: all that do. */
  explanations: Explanation[];
  /** A unit was written and belongs to another kind of quantity. */
  wrongUnit: boolean;
  /** Figures too many (above zero) or too few. */
  extraFigures: number;
}

/**
 * Judges a student's answers on the readings of the sheet, each on the student's own earlier figures. A slip that
 * explains one answer is carried forward into the steps between answers that nobody has entered.
 */
export function judge(sheet: Sheet, program: Program, columns: readonly Column[], entries: readonly Entry[]): Judged[] {
  const own = ownFigures(columns, entries);
  const coarse = new Set<string>();
  const carried: Made[] = [];
  let allRight = true;
  // Ranges are worked for all steps at once, and again only where a slip is carried forward.
  const rangesOn = remembered(reach);
  const onOwn = (work: Work): Ranges => (id) => rangesOn(work).get(id)!;
  const key: Work = { sheet, program, own: {} };
  let work: Work = { sheet, program, own };
  return columns.map((column, i) => {
    const steps = slipped(program, carried);
    if (steps !== work.program) work = { ...work, program: steps };
    const accept = onOwn(work)(column.id)[column.row]!;
    const withSlips = judgeOne(work, column, entries[i]!, accept, () => others(work, program, coarse, allRight, onOwn(key)));
    const judged = isPuzzle(withSlips) && steps !== program ? judgeAlone({ sheet, program, own }, column, entries[i]!) : withSlips;
    allRight &&= judged.verdict === 'right' || judged.verdict === 'absent';
    for (const { slip, at, with: second } of judged.explanations.slice(0, 1)) {
      if (slip === 'rounded too far' || slip === 'cut off') coarse.add(column.id);
      for (const one of [{ slip, at }, ...(second ? [second] : [])]) carry(carried, program, own, one);
    }
    return judged;
  });
}

const isPuzzle = ({ verdict, explanations }: Judged) => verdict === 'wrong' && explanations.length === 0;

/** A slip that is thought to be carried forward, and explains nothing there, is no measure of what is wrong without it. */
function judgeAlone(work: Work, column: Column, entry: Entry): Judged {
  return judgeOne(work, column, entry, reachOf(work, column.id)[column.row]!, () => []);
}

/** Gives the same result for the same object without working it again. */
function remembered<In extends object, Out>(make: (of: In) => Out): (of: In) => Out {
  const kept = new Map<In, Out>();
  return (of) => {
    const there = kept.get(of) ?? make(of);
    kept.set(of, there);
    return there;
  };
}

/** The ranges of a step, one a row. */
type Ranges = (id: string) => Interval[];

/**
 * Other figures that a student may have gone on with: better ones than were written, the right formula, or the key's.
 * After right figures alone the key's value follows: a tie was rounded one way and gone on with the other.
 */
function others(work: Work, right: Program, coarse: ReadonlySet<string>, allRight: boolean, onKey: Ranges): { ranges: Ranges; verdict: Verdict }[] {
  const finer = Object.fromEntries(Object.entries(work.own).filter(([id]) => !coarse.has(id)));
  const by = (other: Work): { ranges: Ranges; verdict: Verdict } => ({ ranges: (id) => reachOf(other, id), verdict: 'right' });
  return [
    ...(coarse.size > 0 ? [by({ ...work, own: finer })] : []),
    ...(work.program === right ? [] : [by({ ...work, program: right })]),
    { ranges: onKey, verdict: allRight ? 'right' : 'right by the key' },
  ];
}

function carry(carried: Made[], program: Program, own: Own, { slip: id, at }: { slip: string; at: string }): void {
  const slip = slipsOf(program.step(at)).find((each) => each.id === id);
  // A figure of the student's own stands in place of the formula, so that a slip there is carried by it; a table may have rows that were not entered.
  const hidden = own[at] !== undefined && program.step(at).per === undefined;
  if (slip && !hidden && !carried.some((made) => made.at === at)) carried.push({ at, slip });
}

/** The student's values by step and row, in the units of the steps. */
export function ownFigures(columns: readonly Column[], entries: readonly Entry[]): Own {
  const own: Own = {};
  columns.forEach((column, i) => {
    const entry = entries[i]!;
    if (entry.is === 'number') (own[column.id] ??= [])[column.row] = inUnitOf(column, entry);
  });
  return own;
}

const units = new Map<string, StatedUnit>();

function unitOf(name: string): StatedUnit {
  const kept = units.get(name) ?? readUnit(name) ?? { of: name, tens: 0 };
  units.set(name, kept);
  return kept;
}

const isOther = ({ unit }: NumberEntry, column: Column) => unit !== undefined && unit.of !== unitOf(column.unit).of;

/** A value in cm where the step has mm is moved by its prefix; beside a unit of another kind the number counts as it stands. */
function inUnitOf(column: Column, entry: NumberEntry): Written {
  return entry.unit === undefined || isOther(entry, column) ? entry.written : shift(entry.written, entry.unit.tens - unitOf(column.unit).tens);
}

function judgeOne(work: Work, column: Column, entry: Entry, accept: Interval, otherWays: () => { ranges: Ranges; verdict: Verdict }[]): Judged {
  const { id, row } = column;
  const expected = exactly(work, id).get(id)![row]!;
  const common = { column, entry, accept, expected, explanations: [], wrongUnit: false, extraFigures: 0 };
  if (entry.is !== 'number') return { ...common, verdict: 'absent' };
  const written = inUnitOf(column, entry);
  const value = Number(written);
  const stated = statedPlace(value, column.digits);
  const found = { ...common, value: written, wrongUnit: isOther(entry, column), extraFigures: value === 0 ? 0 : stated - lastPlace(written) };
  if (within(value, accept)) return { ...found, verdict: 'right' };
  const other = otherWays().find(({ ranges }) => within(value, ranges(id)[row]!));
  if (other) return { ...found, verdict: other.verdict };
  const bare = entry.unit && !found.wrongUnit && written !== entry.written ? { bare: entry.written } : {};
  // Digits are asked for at the size of the right value, whatever the slip has made of it.
  const wrong = { written, right: accept, stated: Number.isFinite(expected) ? statedPlace(expected, column.digits) : stated, ...bare };
  const explanations = explain(work, { id, row, value, right: accept }, wrong);
  const moved = 'decimals' in column.digits ? pointMoved(explanations, written, entry.written) : 0;
  return { ...found, verdict: 'wrong', explanations, extraFigures: found.extraFigures + moved };
}

/** How far the point has moved to the right by a slip of writing, so that its decimals are counted where it belongs. */
function pointMoved(explanations: readonly Explanation[], written: Written, bare: Written): number {
  for (const { slip, places } of explanations) {
    if (slip === 'power of ten') return places!;
    if (slip === 'unit beside the number') return lastPlace(written) - lastPlace(bare);
  }
  return 0;
}
