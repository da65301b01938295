import { tensInto, scale, at } from '../quantities/evaluate.ts';
import type { Formula } from '../quantities/formula.ts';
import { point } from '../quantities/interval.ts';
import type { Compiled, Program } from '../quantities/program.ts';
import { roundings } from '../quantities/roundings.ts';
import type { Interval, Relation } from '../quantities/step.ts';
import { unit } from '../quantities/unit.ts';
import { type Work, reach } from './reach.ts';
import { inputsOf } from './slipped.ts';

/** How one end of an accept range is reached. */
export interface End {
  /** The end itself. */
  value: number;
  /** What the choices below come to before the last rounding. */
  before: number;
  /** The inputs that rounding leaves a choice of, at the value that leads to this end. */
  inputs: { id: string; value: number }[];
  /** Another route than the formula's own. */
  route?: string;
  /** What π is put as, where it counts. */
  pi?: '3.14' | '22/7';
}

/** Why an answer's range ends where it does: for each end the choices of rounding, route and π that reach it. */
export function whyRange(work: Work, id: string, row: number): { low: End; high: End } {
  const ranges = reach(work);
  const step = work.program.step(id);
  if (step.kind !== 'relation' && step.kind !== 'summary') throw new Error(`${id} is no answer`);
  const taken = (input: string, place: number): Interval => ownOr(work, input, place) ?? at(ranges.get(input)!, place);
  const [low, high] = ranges.get(id)![row]!;
  if (step.kind === 'summary') {
    if (step.by !== 'mean') return { low: { value: low, before: low, inputs: [] }, high: { value: high, before: high, inputs: [] } };
    const [column] = step.of as [string];
    const end = (which: 0 | 1): End => {
      const mean = meanOf(ranges.get(column)!.map((_, place) => taken(column, place)[which]));
      return { value: [low, high][which]!, before: mean, inputs: [] };
    };
    return { low: end(0), high: end(1) };
  }
  const ways = waysTo(work.program, step, (input) => taken(input, row));
  const least = ways.reduce((a, b) => (b.range[0] < a.range[0] ? b : a));
  const most = ways.reduce((a, b) => (b.range[1] > a.range[1] ? b : a));
  return { low: endOf(low, least, 0), high: endOf(high, most, 1) };
}

const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

function ownOr({ own }: Work, id: string, row: number): Interval | undefined {
  const mine = own[id];
  const written = mine?.length === 1 ? mine[0] : mine?.[row];
  return written === undefined ? undefined : point(Number(written));
}

/** One choice of inputs and route, and what the formula comes to with π from 3.14 to 22/7. */
interface Way {
  range: Interval;
  inputs: End['inputs'];
  route?: string;
  usesPi: boolean;
}

function endOf(value: number, { range, inputs, route, usesPi }: Way, which: 0 | 1): End {
  const before = range[which];
  const pi = (before > 0) === (which === 0) ? ('3.14' as const) : ('22/7' as const);
  return { value, before, inputs, ...(route !== undefined && { route }), ...(usesPi && { pi }) };
}

function waysTo(program: Program, relation: Relation, taken: (id: string) => Interval): Way[] {
  const compiled = program.compiled(relation.id);
  const names = inputsOf(program, relation);
  const open = names.filter((id) => wide(taken(id)));
  const out = relation.si ? -unit(relation.unit).tens : 0;
  return corners(open.map(taken)).flatMap((corner) => {
    const inputs = open.map((id, i) => ({ id, value: corner[i]! }));
    const value = (id: string): Interval => point(scale(inputs.find((input) => input.id === id)?.value ?? taken(id)[0], tensInto(program, relation, id)));
    return routesOf(compiled, value).map(({ range, ...rest }): Way => ({ ...rest, inputs, range: [scale(range[0], out), scale(range[1], out)] }));
  });
}

const wide = ([low, high]: Interval) => high - low > 1e-12 * Math.abs(high);

function corners(ranges: readonly Interval[]): number[][] {
  return ranges.reduce<number[][]>((all, [low, high]) => all.flatMap((one) => [[...one, low], [...one, high]]), [[]]);
}

function routesOf({ as, routes }: Compiled, value: (id: string) => Interval): { range: Interval; route?: string; usesPi: boolean }[] {
  const ranged = (formula: Formula, of: (id: string) => Interval) => formula.range(formula.names.map(of));
  const usesPi = /\bpi\b/.test(as.text);
  const others = routes.map(({ id, via, as: last }) => {
    const lines = new Map<string, Interval>();
    const of = (name: string) => lines.get(name) ?? value(name);
    for (const line of via) lines.set(line.id, roundings(ranged(line.as, of), line.digits));
    return { range: ranged(last, of), route: id, usesPi };
  });
  return [{ range: ranged(as, value), usesPi }, ...others];
}
