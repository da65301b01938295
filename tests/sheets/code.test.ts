import { describe, expect, test } from 'vitest';
import { sheetCode } from '../../generators/sheets/code.ts';
import { SECRET } from './class.ts';

describe('a sheet code', () => {
  const codes = Array.from({ length: 2000 }, (_, roll) => sheetCode(SECRET, `${roll}`, 0));

  test('is eight letters and digits without I, L, O and U, in two groups', () => {
    for (const code of codes) expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
  });

  test('uses every letter at every place', () => {
    for (const place of [0, 1, 2, 3, 5, 6, 7, 8]) expect(new Set(codes.map((code) => code[place])).size).toBe(32);
  });

  test('is its own for every roll of the largest class', () => {
    expect(new Set(codes).size).toBe(codes.length);
  });

  test('changes with the secret, the roll and the attempt, and with nothing else', () => {
    const code = sheetCode(SECRET, '7', 0);
    expect(sheetCode(SECRET, '7', 0)).toBe(code);
    for (const other of [sheetCode(`${SECRET}0`, '7', 0), sheetCode(SECRET, '8', 0), sheetCode(SECRET, '7', 1)]) expect(other).not.toBe(code);
  });
});
