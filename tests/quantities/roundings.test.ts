import { Decimal } from 'decimal.js';
import { expect, test } from 'vitest';
import { roundings } from '../../generators/quantities/roundings.ts';
import type { Digits } from '../../generators/quantities/step.ts';
import { streams } from '../../generators/random.ts';

const modes = [Decimal.ROUND_HALF_EVEN, Decimal.ROUND_HALF_UP] as const;

/** A value and every rounding of it to `more` = 0 to 12 further digits, ties either way, by the decimal package alone. */
function everyRounding(value: number, digits: Digits): number[] {
  const meant = new Decimal(value).toSignificantDigits(13);
  const rounded = Array.from({ length: 13 }, (_, more) =>
    modes.map((mode) =>
      Number('decimals' in digits ? meant.toDecimalPlaces(digits.decimals + more, mode) : meant.toSignificantDigits(digits.figures + more, mode)),
    ),
  );
  return [Number(meant), ...rounded.flat()];
}

const random = streams('roundings').of('values');
const sign = () => random.pick([1, -1]);
const kinds: [what: string, value: () => number][] = [
  ['of no digits in particular', () => sign() * random.between(0, 1) * Number(`1e${random.integer(-8, 5)}`)],
  ['that differences leave', () => sign() * (100 - random.integer(0, 1000) / 10)],
  ['at a tie', () => (sign() * (2 * random.integer(0, 5000) + 1)) / 2000],
  ['beside a tie, by the noise of a double and by more', () => ((sign() * (2 * random.integer(0, 5000) + 1)) / 2000) * (1 + random.between(-1e-12, 1e-12))],
  ['beside a step', () => ((sign() * random.integer(1, 9999)) / 1000) * (1 + random.between(-1e-12, 1e-12))],
];
const digitses: Digits[] = [{ decimals: 0 }, { decimals: 1 }, { decimals: 3 }, { figures: 1 }, { figures: 3 }];

test.each(kinds)('values %s reach from the least to the greatest of their roundings', (_, value) => {
  for (let i = 0; i < 1000; i++) {
    const one = value();
    for (const digits of digitses) {
      const all = everyRounding(one, digits);
      expect(roundings([one, one], digits), `${one} to ${JSON.stringify(digits)}`).toEqual([Math.min(...all) + 0, Math.max(...all) + 0]);
    }
  }
});
