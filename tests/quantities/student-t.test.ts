import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { t95 } from '../../generators/quantities/student-t.ts';

const { jStat } = createRequire(import.meta.url)('jstat') as { jStat: { studentt: { inv(p: number, freedom: number): number } } };
const exact = (freedom: number) => jStat.studentt.inv(0.975, freedom);

describe('t for 95 % coverage', () => {
  test.each(Array.from({ length: 30 }, (_, i) => i + 1))('%d degrees of freedom: the printed two decimals of the exact value', (freedom) => {
    expect(Math.abs(t95(freedom) - exact(freedom))).toBeLessThanOrEqual(0.0051);
  });
  test.each([35, 40, 45, 50, 100])('%d degrees of freedom: as table G.2 prints it', (freedom) => {
    expect(Math.abs(t95(freedom) - exact(freedom))).toBeLessThanOrEqual(0.0051);
  });
  // JCGM 100:2008, table G.2, column for 95 %.
  test.each([[1, 12.71], [2, 4.3], [3, 3.18], [5, 2.57], [7, 2.36], [10, 2.23], [16, 2.12], [20, 2.09], [30, 2.04], [100, 1.984], [Infinity, 1.96]])('%d: %d', (freedom, t) => {
    expect(t95(freedom)).toBe(t);
  });
  test('effective degrees of freedom are cut to the whole number below, JCGM 100:2008, G.4.1', () => {
    expect(t95(5.99)).toBe(t95(5));
  });
  test('between two entries of the table never less than the exact value allows', () => {
    for (let freedom = 31; freedom <= 100; freedom++) expect(t95(freedom)).toBeGreaterThan(exact(freedom) - 0.0051);
  });
  test('below one degree of freedom there is none', () => {
    expect(() => t95(0)).toThrow(RangeError);
    expect(() => t95(NaN)).toThrow(RangeError);
  });
});
