import { Decimal as Whole } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { Decimal as Small } from '../../generators/practice/decimal.ts';
import { streams } from '../../generators/random.ts';

const MODES = [2, 3, 4, 6] as const;

/** Numbers as they come up: near ties, of every size, whole ones, and zero. */
const numbers = (() => {
  const random = streams('decimals').of('numbers');
  const any = Array.from({ length: 4000 }, () => {
    const places = random.integer(-12, 9);
    const scale = Number(`1e${places}`);
    const value = random.pick([random.between(-1, 1), random.integer(-9999, 9999) / 1000, random.integer(-200, 200) / 2, random.integer(-99, 99) + 0.5 * random.integer(-1, 1)]);
    return value * scale;
  });
  return [0, 1, -1, 0.5, 1.5, 2.5, 9.5, 99.95, 0.05, 1e-7, 1e21, 2.15, 12.545001, ...any];
})();

describe('decimals in a page', () => {
  it('round as decimal.js does, to decimals and to figures, each way', () => {
    for (const value of numbers) {
      for (const mode of MODES) {
        for (const digits of [0, 1, 2, 3, 5]) {
          const [small, whole] = [new Small(value).toSignificantDigits(13), new Whole(value).toSignificantDigits(13)];
          expect(small.toDecimalPlaces(digits, mode).toFixed(digits), `${value} to ${digits} decimals, ${mode}`).toBe(whole.toDecimalPlaces(digits, mode).toFixed(digits));
          const [some, all] = [small.toSignificantDigits(digits + 1, mode), whole.toSignificantDigits(digits + 1, mode)];
          expect(some.toExponential(digits), `${value} to ${digits + 1} figures, ${mode}`).toBe(all.toExponential(digits));
          expect([some.e, some.isZero()]).toEqual([all.e, all.isZero()]);
        }
      }
    }
  });

  it.each(['43.2', '0.60', '-0.03', '4.97e-7', '49e-8', '100e-8', '0.0', '1e3', '-2.50e+2'])('read %s as decimal.js does', (text) => {
    for (const decimals of [0, 1, 4]) {
      expect(new Small(text).toFixed(decimals)).toBe(new Whole(text).toFixed(decimals));
      expect(new Small(text).toExponential(decimals)).toBe(new Whole(text).toExponential(decimals));
    }
  });
});
