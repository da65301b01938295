import { linear } from './network.ts';

/** Equations between named quantities: each is zero where they hold. One that names a quantity which is not there is not a number. */
export type Equations = (values: Record<string, number>) => number[];

/** The equations that can be told with these quantities. */
export function tellable(equations: Equations, values: Record<string, number>): Equations {
  const withGaps = (some: Record<string, number>) => new Proxy(some, { get: (all, id: string) => all[id] ?? NaN });
  const told = equations(withGaps(values)).map((value) => !Number.isNaN(value));
  return (now) => equations(withGaps(now)).filter((_, i) => told[i]);
}

const NUDGE = 1e-6;

/**
 * Solves the equations for some of the quantities by Newton's method on numerical slopes (least squares where there
 * are more equations than unknowns), from a start away from any solution that is known.
 */
export function solveNumerically(equations: Equations, values: Record<string, number>, unknowns: readonly string[]): Record<string, number> {
  const now = { ...values };
  for (let round = 0; round < 60; round++) {
    const off = equations(now);
    const slopes = unknowns.map((id) => {
      const step = NUDGE * Math.max(Math.abs(now[id]!), 1e-9);
      const up = equations({ ...now, [id]: now[id]! + step });
      const down = equations({ ...now, [id]: now[id]! - step });
      return off.map((_, k) => ((up[k]! - down[k]!) / (2 * step)) * scaleOf(now[id]!));
    });
    const rows = slopes.map((a) => [...slopes.map((b) => dot(a, b)), -dot(a, off)]);
    const moves = linear(rows);
    unknowns.forEach((id, i) => (now[id] = now[id]! + moves[i]! * scaleOf(now[id]!)));
    if (moves.every((move) => Math.abs(move) < 1e-13)) break;
  }
  return now;
}

const scaleOf = (value: number) => Math.max(Math.abs(value), 1e-12);
const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
