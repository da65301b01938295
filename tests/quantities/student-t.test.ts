import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { t95 } from '../../generators/quantities/student-t.ts';

const { jStat } = createRequire(import.meta.url)('jstat') as { jStat: { studentt: { inv(p: number, freedom: number): number } } };
const exact = (freedom: number) => jStat.studentt.inv(0.975, freedom);

describe('t for 95 % coverage', () => {
  test.each(Array.from({ length: 30 }, (_, i) => i + 1))('%d degrees of freedom: the printed two decimals of the exact value', (freedom) => {
    expect(Math.abs(t95(freedom) - exact(freedom))).toBeLessThanOrEqual(0.0051);
  });
  // JCGM 100:2008, table G.2, column for 95 %.
  test.each([[1, 12.71], [2, 4.3], [3, 3.18], [5, 2.57], [7, 2.36], [10, 2.23], [16, 2.12], [20, 2.09], [30, 2.04]])('%d: %d', (freedom, t) => {
    expect(t95(freedom)).toBe(t);
  });
  test.each([[35, 2.03], [40, 2.02], [45, 2.01], [50, 2.01], [100, 1.984], [Infinity, 1.96]])('%d: %d, to its printed decimals', (freedom, t) => {
    expect(Math.abs(t95(freedom) - t)).toBeLessThan(t === 1.984 || t === 1.96 ? 0.0005 : 0.005);
  });
  test('effective degrees of freedom are cut to the whole number below, JCGM 100:2008, G.4.1', () => {
    expect(t95(5.99)).toBe(t95(5));
  });
  test('beyond thirty degrees of freedom within 0.0001 of the exact value', () => {
    for (const freedom of [31, 35, 47, 60, 100, 229, 1503]) expect(Math.abs(t95(freedom) - exact(freedom))).toBeLessThan(0.0001);
  });
  test('below one degree of freedom there is none', () => {
    expect(() => t95(0)).toThrow(RangeError);
    expect(() => t95(NaN)).toThrow(RangeError);
  });
});
