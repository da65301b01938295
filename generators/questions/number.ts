import type { Digits, Written } from '../quantities/step.ts';
import { round } from '../quantities/written.ts';

/** What binary arithmetic may have left of a whole number, as a part of it. */
const NOISE = 1e-10;

const isWhole = (value: number) => Math.abs(value - Math.round(value)) <= NOISE * Math.max(1, Math.abs(value));

/** A multiple of the grain, within what binary arithmetic leaves. */
export const isMultiple = (value: number, grain: number): boolean => isWhole(value / grain);

/** Thirds to twelfths are what the tables that are learned by heart reach. */
const LARGEST_DENOMINATOR = 12;
/** As many figures as the decimal beside it has: 200/3 says more than 66.7, 1830/13 no more than 141. */
const LARGEST_NUMERATOR = 999;

/** '58/3' for 19.333…, where it is simpler than a decimal; nothing for a decimal that ends, and for any other. Limits: common practice, no source. */
export function simpleFraction(value: number): string | undefined {
  if (endsWithin(value, 4)) return undefined;
  for (let below = 2; below <= LARGEST_DENOMINATOR; below++) {
    const above = Math.round(value * below);
    if (isWhole(value * below) && Math.abs(above) <= LARGEST_NUMERATOR) return `${above}/${below}`;
  }
  return undefined;
}

/** Whether a decimal of so many figures is the whole of it. */
export function endsWithin(value: number, figures: number): boolean {
  if (!Number.isFinite(value)) return false;
  if (value === 0) return true;
  let scaled = Math.abs(value);
  const least = LEAST[figures - 1]!;
  while (scaled < least) scaled *= 10;
  while (scaled >= 10 * least) scaled /= 10;
  return Math.abs(scaled - Math.round(scaled)) <= NOISE * scaled;
}

/** The least number of one figure, of two, …, before the decimal point. */
const LEAST = [1, 10, 100, 1000, 10_000, 100_000];

/** Three figures, or four where the value ends there; a line on the way that does not end has more, so that the answer is not moved. */
export function digitsOf(value: number, isAnswer: boolean, onTheWay = 5): Digits {
  if (endsWithin(value, 3)) return { figures: 3 };
  if (endsWithin(value, 4)) return { figures: 4 };
  return { figures: isAnswer ? 3 : onTheWay };
}

/** Two values that a reader could take for roundings of the same: within one per cent. */
export function areAlike(a: number, b: number): boolean {
  return Math.abs(a - b) <= 0.01 * Math.max(Math.abs(a), Math.abs(b));
}

/** A grid's values as they are printed, '20.0' with as many decimals as its step has. */
export function gridValue(from: number, step: Written, index: number): Written {
  return round(from + index * Number(step), { decimals: step.split('.')[1]?.length ?? 0 }, 'even');
}

/** A value that is to be given, to three figures: '7.50', '12'. */
export function asPrinted(value: number): Written {
  const written = round(value, { figures: 3 }, 'even');
  return value >= 10 ? written.replace(/\.0+$/, '') : written;
}
