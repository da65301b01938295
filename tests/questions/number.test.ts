import { describe, expect, test } from 'vitest';
import { simpleFraction } from '../../generators/questions/number.ts';

describe('a fraction is shown where it is simpler than a decimal', () => {
  test.each([
    [58 / 3, '58/3'],
    [200 / 3, '200/3'],
    [800 / 11, '800/11'],
    [-50 / 3, '-50/3'],
    [5 / 12, '5/12'],
  ])('%f is %s', (value, fraction) => expect(simpleFraction(value)).toBe(fraction));

  test.each([
    ['a decimal that ends', 2.625],
    ['a denominator that no table reaches', 1830 / 13],
    ['more figures above than the decimal has', 4000 / 3],
    ['no fraction at all', Math.SQRT2],
  ])('not for %s', (_, value) => expect(simpleFraction(value)).toBeUndefined());
});
