import { describe, expect, test } from 'vitest';
import { keyedHash } from '../../generators/random.ts';
import { day } from './bench-day.ts';

describe('over 10 000 sets of readings', () => {
  const broken: string[] = [];
  const rule = (kept: boolean, what: string, seen: unknown) => {
    if (!kept) broken.push(`${what}: ${JSON.stringify(seen)}`);
  };
  const hundredths = (text: string) => Math.round(100 * Number(text));
  const zeros = new Set<string>();

  test('none breaks a rule of its instrument', () => {
    for (let number = 0; number < 10_000; number++) {
      const { rows, length, gauge, zero, diameters } = day(number);
      for (const { l } of rows) rule(/^(\d{1,2}|100)\.\d$/.test(l) && Number(l) <= 100, 'a balance length on the scale, to 0.1 cm', l);
      rule(/^\d{2,3}\.\d$/.test(length), 'a length to 0.1 cm', length);
      for (const reading of diameters) {
        const { main, division, total } = reading;
        rule(Number.isInteger(division) && division >= 0 && division < gauge.divisions, 'a division of the circular scale', reading);
        rule(/^\d+\.\d$/.test(main) && hundredths(main) % hundredths(gauge.pitch) === 0, 'whole pitches on the main scale', reading);
        rule(/^\d+\.\d\d$/.test(total) && hundredths(main) + division === hundredths(total), 'a total of both scales', reading);
      }
      const signed = zero.zero === 'past the line' ? zero.division - gauge.divisions : zero.division;
      rule(hundredths(zero.error) === signed && /^-?0\.\d\d$/.test(zero.error), 'a zero error from its division', zero);
      rule((zero.zero === 'at the line') === (zero.division === 0), 'a zero at the line only with division 0', zero);
      zeros.add(zero.zero);
    }
    expect(broken).toEqual([]);
    expect(zeros.size).toBe(3);
  });
});

/** Changes only with a new edition: packs that were issued must come out the same again. */
test('the readings of the first 50 sets are those of edition 1', () => {
  const days = Array.from({ length: 50 }, (_, number) => day(number));
  expect(keyedHash('readings', [JSON.stringify(days)])).toBe('688a17d78b43145a920bf45cbefdb53d9372ab1b594881f9f0b515f2c893b0ef');
});
