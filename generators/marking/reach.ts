import { acceptRanges } from '../quantities/accept.ts';
import type { Own, Readings } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval } from '../quantities/step.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { type Chain, chainTo } from './chain.ts';

/** A sheet worked by one set of steps, with what a student wrote in place. */
export interface Work {
  sheet: Sheet;
  program: Program;
  own: Own;
}

/** Every value of a step without rounding, one a row. */
export function exactly({ sheet, program, own }: Work, id: string): Chain {
  return chainTo(program, id, sheet.readings, own);
}

/** What honest work gives for every step, as `workOut` has it, also where a student's zero makes later steps infinite. */
export function reach({ sheet, program, own }: Work): Map<string, Interval[]> {
  return acceptRanges(program, sheet.readings, { ...sheet.conventions, drawn: {} }, own);
}

/** What honest work gives for a step, one range a row; readings off drawings may be anywhere in their latitude. */
export function reachOf(work: Work, id: string): Interval[] {
  return widened(work, id, reach(work).get(id)!);
}

/** The answers file has no readings: one taken off a drawing is known within its latitude only, and all may act together. */
export function widened(work: Work, id: string, ranges: Interval[]): Interval[] {
  const { readings, conventions } = work.sheet;
  const drawn = Object.entries(conventions.drawn).filter(([reading, latitude]) => latitude > 0 && work.own[reading] === undefined);
  if (drawn.length === 0) return ranges;
  const middle = exactly(work, id).get(id)!;
  const off = middle.map(() => 0);
  for (const [reading, latitude] of drawn) {
    for (const moved of movedReadings(readings, reading, latitude)) {
      chainTo(work.program, id, moved, work.own).get(id)!.forEach((value, row) => (off[row]! += Math.abs(value - middle[row]!)));
    }
  }
  return ranges.map(([low, high], row) => [low - off[row]!, high + off[row]!]);
}

/** The readings with one of a quantity's moved by its latitude, one after the other. */
function movedReadings(readings: Readings, id: string, latitude: number): Readings[] {
  const column = [readings[id] ?? []].flat();
  return column.map((_, row) => ({ ...readings, [id]: column.map((value, i) => (i === row ? String(Number(value) + latitude) : value)) }));
}

const NOISE = 1e-9;

/** Whether a value lies in a range, whose ends computing in binary may have moved by a trifle. */
export function within(value: number, [low, high]: Interval): boolean {
  const slack = NOISE * Math.max(Math.abs(low), Math.abs(high), Math.abs(value));
  return value >= low - slack && value <= high + slack;
}
