import type { Interval, Written } from '../quantities/step.ts';
import { parts } from '../quantities/written.ts';
import { lastPlace } from './last-place.ts';
import { within } from './reach.ts';
import type { PlainSlip } from './slip.ts';

/** A wrong value beside what would have been right. */
export interface Wrong {
  /** In the unit of the step. */
  written: Written;
  /** The digits as they were written, where the unit beside them has another prefix. */
  bare?: Written;
  right: Interval;
  /** The last place that the value is to be written with. */
  stated: number;
}

/** Slips of writing and reckoning that turn a right value into this one. */
export function plainSlips(wrong: Wrong): { slip: PlainSlip; places?: number }[] {
  const value = Number(wrong.written);
  const [mantissa, exponent] = parts(wrong.written);
  const found: { slip: PlainSlip; places?: number }[] = [];
  if (value !== 0 && within(-value, wrong.right)) found.push({ slip: 'sign lost' });
  if (wrong.bare !== undefined && within(Number(wrong.bare), wrong.right)) found.push({ slip: 'unit beside the number' });
  const places = value === 0 || !withinDecade(wrong.right) ? [] : TENS.filter((tens) => within(Number(`${mantissa}e${exponent - tens}`), wrong.right));
  found.push(...places.map((tens) => ({ slip: 'power of ten' as const, places: tens })));
  if (isRoundedTooFar(wrong)) found.push({ slip: 'rounded too far' });
  else if (isCutOff(wrong)) found.push({ slip: 'cut off' });
  if (transpositions(wrong.written).some((other) => within(Number(other), wrong.right))) found.push({ slip: 'digits transposed' });
  return found;
}

/** A range round zero or over tenfold holds the digits of any number at some place of the point. */
const withinDecade = ([low, high]: Interval) => low * high > 0 && Math.max(low / high, high / low) < 10;

/** Decimal points are moved by a few places, as between mm and m, twice over where a length is squared; nine is more than anybody's. */
const TENS = Array.from({ length: 9 }, (_, i) => i + 1).flatMap((tens) => [tens, -tens]);

const unitOf = (written: Written) => Number(`1e${lastPlace(written)}`);

/** One digit too few, by right rounding. */
function isRoundedTooFar({ written, right, stated }: Wrong): boolean {
  const half = unitOf(written) / 2;
  return lastPlace(written) === stated + 1 && Number(written) - half <= right[1] && Number(written) + half >= right[0];
}

/** As many digits as asked for, or one too few, and what came after them dropped. */
function isCutOff({ written, right, stated }: Wrong): boolean {
  const [least, greatest] = [Math.min(...right.map(Math.abs)), Math.max(...right.map(Math.abs))];
  const size = Math.abs(Number(written));
  const sameSide = Math.sign(Number(written)) === Math.sign(right[0]) && right[0] * right[1] > 0;
  return sameSide && [stated, stated + 1].includes(lastPlace(written)) && size < least && size + unitOf(written) > (least + greatest) / 2;
}

/** The same digits with two neighbours changed over. */
function transpositions(written: Written): Written[] {
  const [mantissa, exponent] = parts(written);
  const digits = mantissa.replace(/\D/g, '');
  return Array.from({ length: Math.max(0, digits.length - 1) }, (_, i) => i)
    .filter((i) => digits[i] !== digits[i + 1])
    .map((i) => {
      const swapped = digits.slice(0, i) + digits[i + 1] + digits[i] + digits.slice(i + 2);
      let next = 0;
      return `${mantissa.replace(/\d/g, () => swapped[next++]!)}e${exponent}`;
    });
}
