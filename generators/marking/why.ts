import { honestWork } from '../quantities/accept.ts';
import { byEye } from '../quantities/by-eye.ts';
import { at } from '../quantities/evaluate.ts';
import { roundings } from '../quantities/roundings.ts';
import type { Interval, Summary } from '../quantities/step.ts';
import { summaryMethods, summaryRange } from '../quantities/summary.ts';
import type { Work } from './reach.ts';
import { type Choice, type Way, waysTo, wide } from './ways.ts';

/** How one end of an accept range is reached: by these choices to `before`, and that rounded. */
export interface End {
  value: number;
  before: number;
  choices: Choice[];
}

/** Work of which the ranges are asked: with the latitudes of readings that nobody knows, as in `acceptRanges`. */
export interface Asked extends Work {
  unread?: Record<string, number>;
}

export type Ends = Record<'low' | 'high', End>;

/** Why the ranges of a sheet's answers end where they do: for each end the choices of rounding, route and π that reach it. */
export function whyRanges({ sheet, program, own, unread }: Asked): (id: string, row: number) => Ends {
  const { tables } = sheet.conventions;
  const { ranges, carried } = honestWork(program, sheet.readings, { ...sheet.conventions, drawn: {}, ...(unread && { unread }) }, own);
  return (id, row) => {
    const step = program.step(id);
    if (step.kind !== 'relation' && step.kind !== 'summary') throw new Error(`${id} is no answer`);
    const [low, high] = ranges.get(id)![row]!;
    const ways = step.kind === 'relation'
      ? waysTo(program, step, (input) => at(carried.get(input)!, row), tables)
      : waysToSummary(step, step.of.map((column) => carried.get(column)!));
    const least = ways.reduce((best, way) => (lower(way, best) ? way : best));
    const most = ways.reduce((best, way) => (lower(best, way) ? way : best));
    return { low: endOf(low, least), high: endOf(high, most) };
  };
}

/** Lower by more than computing in binary makes of the same; of equals the first stays, which has the formula's own route. */
const lower = (one: Way, other: Way) => other.value - one.value > 1e-9 * Math.abs(other.value);

const endOf = (value: number, way: Way): End => ({ value, before: way.value, choices: way.choices });

function waysToSummary({ by, of, digits, byEye: laid }: Summary, columns: Interval[][]): Way[] {
  const range = summaryRange(summaryMethods[by], columns);
  if (by === 'mean') {
    const open = columns[0]!.some(wide);
    return ENDS.map((end, i) => ({ choices: open ? [{ is: 'each', id: of[0]!, end }] : [], value: range[i]! }));
  }
  const best = roundings(range, digits);
  if (!laid) return ENDS.map((_, i) => ({ choices: [{ is: 'best line', value: best[i]! }], value: best[i]! }));
  const slack = byEye(by, columns.map((column) => column.map(([low, high]) => (low + high) / 2)));
  return ENDS.map((end, i) => ({ choices: [{ is: 'best line', value: best[i]! }, { is: 'by eye', end, value: slack }], value: best[i]! + (i === 0 ? -slack : slack) }));
}

const ENDS = ['lowest', 'highest'] as const;
