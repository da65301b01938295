import type { Digits, Interval } from './step.ts';
import { type Ties, round } from './written.ts';

/** All that rounding to the stated digits, or to more, makes of an interval; rounding keeps order, so the ends suffice. */
export function roundings([low, high]: Interval, digits: Digits): Interval {
  // Adding to zero, or taking from it, leaves no zero with a sign.
  return [0 + lowestRounding(low, digits), 0 - lowestRounding(-high, digits)];
}

/** The coarsest rounding that goes down is the lowest: finer ones count in steps that hold its steps. */
function lowestRounding(value: number, digits: Digits): number {
  if (!Number.isFinite(value) || value === 0) return value;
  return beyondDoubt(value, decimalsFor(value, digits)) ?? inDecimal(value, digits);
}

/** More than any calculator shows; beyond them a double is noise. */
const MOST_FIGURES = { figures: 13 };

const ties: Ties[] = ['even', 'up'];

function inDecimal(value: number, digits: Digits): number {
  const meant = Number(round(value, MOST_FIGURES, 'even'));
  for (let more = 0; more < MOST_FIGURES.figures; more++) {
    for (const tie of ties) {
      const rounded = Number(round(meant, finer(digits, more), tie));
      if (rounded <= meant) return rounded;
    }
  }
  return meant;
}

const finer = (digits: Digits, more: number): Digits =>
  'decimals' in digits ? { decimals: digits.decimals + more } : { figures: digits.figures + more };

/** Parts of a value: what multiplying in binary may lose, and what rounding to thirteen figures may move, both generously. */
const LOST = 2e-14;
const MOVED = 6e-13;

/**
 * The same in binary, many times as fast, for all but the few values that lie so near to a tie or a step that only the
 * decimal tells their side; undefined for those.
 */
function beyondDoubt(value: number, decimals: number): number | undefined {
  if (decimals < 0 || decimals > EXACT_POWERS - MOST_FIGURES.figures) return undefined;
  for (let more = 0; more < MOST_FIGURES.figures; more++) {
    const one = tenTo(decimals + more);
    const count = value * one;
    const nearest = Math.round(count);
    const off = Math.abs(count - nearest);
    if (off <= LOST * Math.abs(count)) return nearest / one;
    const doubt = MOVED * Math.abs(count);
    if (off <= doubt || Math.abs(off - 0.5) <= doubt) return undefined;
    if (nearest < count) return nearest / one;
  }
  return undefined;
}

/** Powers of ten up to this one are doubles. */
const EXACT_POWERS = 22;

/** Decimals that the digits come to. */
function decimalsFor(value: number, digits: Digits): number {
  if ('decimals' in digits) return digits.decimals;
  let order = 0;
  while (Math.abs(value) >= tenTo(order + 1)) order++;
  while (Math.abs(value) < tenTo(order)) order--;
  return digits.figures - 1 - order;
}

function tenTo(tens: number): number {
  let out = 1;
  for (let i = 0; i < Math.abs(tens); i++) out *= 10;
  return tens < 0 ? 1 / out : out;
}
