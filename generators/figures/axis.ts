import { type Scaled, tenTo, written } from '../apparatus/decimal.ts';

/** A ruled axis: every square of 10 mm is one step of 1, 2 or 5 times a power of ten. */
export interface Axis {
  /** What a square stands for. */
  step: Scaled;
  /** The first line, in steps. */
  first: number;
  squares: number;
}

/**
 * The axis with the finest step on which all values find room.
 * With `fromZero` zero is one of them; it is also taken in when that costs nothing.
 * RangeError without values.
 */
export function axisFor(values: readonly number[], squares: number, fromZero = false): Axis {
  if (values.length === 0) throw new RangeError('an axis needs values to find its scale');
  const low = Math.min(...values, ...(fromZero ? [0] : []));
  const high = Math.max(...values, ...(fromZero ? [0] : []));
  if (!(high > low)) throw new RangeError(`an axis needs two different values, not ${low} alone`);
  for (const step of steps()) {
    const first = startFor(inSteps(low, step), inSteps(high, step), squares);
    if (first !== undefined) return { step, first, squares };
  }
  throw new RangeError(`no scale for values from ${low} to ${high}`);
}

/**
 * The first line of an axis that holds low to high, all in steps; undefined where they find no room.
 * Zero is taken in where there is room; else the values stand in the middle, but values above zero never get an axis below it.
 */
function startFor(low: number, high: number, squares: number): number | undefined {
  const [first, last] = [Math.floor(low + 1e-9), Math.ceil(high - 1e-9)];
  if (last - first > squares) return undefined;
  if (first >= 0 && last <= squares) return 0;
  const middle = Math.round((low + high - squares) / 2);
  const start = Math.min(first, Math.max(last - squares, middle));
  return first >= 0 ? Math.max(0, start) : start;
}

/** How many squares a value stands from the axis' start. */
export function along({ step, first }: Axis, value: number): number {
  return inSteps(value, step) - first;
}

/** What is written at a heavy line, counted from the axis' start: as many decimals as the step has. */
export function labelAt({ step, first }: Axis, square: number): string {
  return written((first + square) * step.whole, step.decimals).replace('-', '−');
}

/** What a square of 10 mm stands for. */
export function perSquare({ step: { whole, decimals } }: Axis): string {
  return written(whole, decimals);
}

/** The value at a heavy line. */
export function valueAt({ step, first }: Axis, square: number): number {
  return ((first + square) * step.whole) / tenTo(step.decimals);
}

function inSteps(value: number, { whole, decimals }: Scaled): number {
  return (value * tenTo(decimals)) / whole;
}

/** 1-2-5 steps from 10⁻⁹ upwards. */
function* steps(): Generator<Scaled> {
  for (let power = -9; power <= 9; power++) {
    for (const mantissa of [1, 2, 5]) yield power < 0 ? { whole: mantissa, decimals: -power } : { whole: mantissa * tenTo(power), decimals: 0 };
  }
}
