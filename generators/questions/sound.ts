import { type Formula, formula } from '../quantities/formula.ts';
import type { Quantity } from './family.ts';
import type { Direction } from './direction.ts';
import { type Exact, exactly, slipped } from './exact.ts';
import { areAlike, endsWithin, isMultiple, simpleFraction } from './number.ts';
import type { Readings } from '../quantities/evaluate.ts';

/** Why a set of givens makes no question: a value outside its bounds, or a condition of the family that fails. */
export type Fault =
  | { is: 'no value'; id: string }
  | { is: 'out of bounds'; id: string; value: number; low?: number; high?: number; mayBeLeast?: true }
  | { is: 'not whole'; id: string; value: number }
  | { is: 'condition'; reason: string };

/** All quantities of one set of givens, and what is wrong with the set as physics. */
export function faultsOf({ program, body }: Direction, readings: Readings, values: Exact = exactly(program, readings)): { values: Exact; faults: Fault[] } {
  const bounds = Object.entries(body.quantities).flatMap(([id, quantity]) =>
    (values.get(id) ?? []).flatMap((value) => boundFault(id, quantity, value, values)),
  );
  const failed = Object.entries(body.holds ?? {}).filter(([, expression]) => !(valueOf(expression, values) > 0));
  const reasons = [...failed.map(([reason]) => reason), ...[body.fault?.(values) ?? []].flat()];
  return { values, faults: [...bounds, ...reasons.map((reason): Fault => ({ is: 'condition', reason }))] };
}

function boundFault(id: string, { between: [low, high] = ['0', undefined], mayBeLeast, whole }: Quantity, value: number, values: Exact): Fault[] {
  if (!Number.isFinite(value)) return [{ is: 'no value', id }];
  if (whole && !isMultiple(value, 1)) return [{ is: 'not whole', id, value }];
  const from = low === undefined ? undefined : valueOf(low, values);
  const to = high === undefined ? undefined : valueOf(high, values);
  const isBelow = from !== undefined && (mayBeLeast ? value < from : value <= from);
  const isAbove = to !== undefined && value >= to;
  return isBelow || isAbove ? [{ is: 'out of bounds', id, value, ...(from !== undefined && { low: from }), ...(to !== undefined && { high: to }), ...(mayBeLeast && { mayBeLeast }) }] : [];
}

/** An expression on the first rows; positive where it names what this direction has not, for then it says nothing. */
export function valueOf(expression: string, values: Exact): number {
  const { names, value } = read(expression);
  return names.every((name) => values.has(name)) ? value(names.map((name) => values.get(name)![0]!)) : Infinity;
}

const readBefore = new Map<string, Formula>();

function read(expression: string): Formula {
  const kept = readBefore.get(expression) ?? formula(expression, new Set(expression.match(/[A-Za-z]\w*/g)));
  readBefore.set(expression, kept);
  return kept;
}

/** A mistake with a value of its own on this set: the line it is made in, and what it makes of each answer. */
export interface SlipValue {
  id: string;
  step: string;
  answers: Readonly<Record<string, number>>;
}

/** What each slip of a direction comes to; one that leaves no number, or a value that nobody could believe, is none. */
export function slipValues({ program, ask, body }: Direction, readings: Readings, values: Exact): SlipValue[] {
  return ask.steps.flatMap(({ id: step, slips = {} }) =>
    Object.keys(slips).flatMap((id) => {
      const after = exactly(program, readings, new Map([[step, slipped(program, step, id, values)]]));
      const found = ask.finds.flatMap((find) => (after.get(find) ?? []).map((value) => ({ find, value, right: values.get(find)![0]! })));
      const isCredible = found.every(({ find, value, right }) => canBe(find, body.quantities[find]!, value, right, after));
      return isCredible ? [{ id, step, answers: Object.fromEntries(found.map(({ find, value }) => [find, value])) }] : [];
    }),
  );
}

/** No resistance is negative, no null point lies off the wire, and no sign turns but of what goes either way. */
function canBe(id: string, quantity: Quantity, value: number, right: number, values: Exact): boolean {
  if (quantity.eitherWay) return Number.isFinite(value);
  return value * right >= 0 && boundFault(id, quantity, value, values).length === 0;
}

/** Whether every answer is simple: what most sets that are drawn fail at, and quickly told. */
export function hasSimpleAnswers({ ask, body }: Direction, values: Exact): boolean {
  return ask.finds.every((id) => (values.get(id) ?? []).every((value) => isNeat(body.quantities[id]!, value)));
}

/** Whether a sound set is worth printing: every quantity in its place, every slip told apart from the answers and from the others. */
export function isWorthPrinting(direction: Direction, readings: Readings, values: Exact): boolean {
  const { ask, body } = direction;
  for (const [id, column] of values) {
    const quantity = body.quantities[id]!;
    if (!column.every((value) => isInPlace(quantity, value))) return false;
  }
  return areApart(slipValues(direction, readings, values), ask.finds, values);
}

const isInPlace = ({ printed }: Quantity, value: number) => printed === undefined || (value >= printed[0] && value <= printed[1]);

/** Whether a value is simple enough to be an answer, or a given. */
export function isNeat({ neat }: Quantity, value: number): boolean {
  if (neat === 'any') return true;
  return neat === undefined ? endsWithin(value, 4) || simpleFraction(value) !== undefined : isMultiple(value, neat);
}

/** Each slip shows in at least one answer, and no two slips look the same in all of them. */
function areApart(slips: readonly SlipValue[], finds: readonly string[], values: Exact): boolean {
  const right = Object.fromEntries(finds.map((id) => [id, values.get(id)?.[0] ?? 0]));
  const all = [right, ...slips.map(({ answers }) => ({ ...right, ...answers }))];
  return all.every((one, place) => all.slice(0, place).every((other) => finds.some((id) => !areAlike(one[id]!, other[id]!))));
}
