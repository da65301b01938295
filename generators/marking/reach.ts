import { acceptRanges } from '../quantities/accept.ts';
import type { Own } from '../quantities/evaluate.ts';
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

/** What honest work gives for every step, also where a student's zero makes later steps infinite; readings off drawings that were not entered may be anywhere in their latitude. */
export function reach({ sheet, program, own }: Work): Map<string, Interval[]> {
  return acceptRanges(program, sheet.readings, { ...sheet.conventions, drawn: {}, unread: sheet.conventions.drawn }, own);
}

/** What honest work gives for a step, one range a row. */
export function reachOf(work: Work, id: string): Interval[] {
  return reach(work).get(id)!;
}

const NOISE = 1e-9;

/** Whether a value lies in a range, whose ends computing in binary may have moved by a trifle. */
export function within(value: number, [low, high]: Interval): boolean {
  const slack = NOISE * Math.max(Math.abs(low), Math.abs(high), Math.abs(value));
  return value >= low - slack && value <= high + slack;
}
