import { expect } from 'vitest';

/** A partial derivative by central differences at two step widths, the leading error taken out (Richardson). */
export function numericalPartial(value: (args: number[]) => number, args: readonly number[], i: number): number {
  const middle = args[i]!;
  const moved = (by: number) => value(args.map((arg, j) => (j === i ? middle + by : arg)));
  const slope = (step: number) => (moved(step) - moved(-step)) / (2 * step);
  const step = 1e-3 * (Math.abs(middle) || 1);
  return (4 * slope(step / 2) - slope(step)) / 3;
}

/** Fails unless two numbers agree to a fraction of the expected one. */
export function expectWithin(actual: number | undefined, expected: number, fraction: number): void {
  expect(Math.abs(actual! - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(fraction * Math.abs(expected));
}
