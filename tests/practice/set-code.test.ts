import { describe, expect, it } from 'vitest';
import { readSetCode, setCode } from '../../generators/practice/set-code.ts';
import { sheetCode } from '../../generators/sheets/code.ts';

describe('set codes', () => {
  it.each(['set-048213', '#set-048213', 'Set 048213', 'SET-048 213', '048213', ' 048 213 '])('are read from %j', (text) => {
    expect(readSetCode(text)).toBe('set-048213');
  });

  it.each(['', 'set-', '48213', '0482133', 'set-04821x', 'set--048213'])('are not read from %j', (text) => {
    expect(readSetCode(text)).toBeUndefined();
  });

  it('number a million sets', () => {
    expect(setCode(0)).toBe('set-000000');
    expect(setCode(999_999)).toBe('set-999999');
    for (const number of [-1, 1_000_000, 0.5]) expect(() => setCode(number)).toThrow(RangeError);
  });

  it('cannot be mistaken for sheet codes: none is read as the other', () => {
    for (let roll = 0; roll < 2000; roll++) {
      const code = sheetCode('any secret', String(roll), 0);
      expect(readSetCode(code)).toBeUndefined();
      expect(code).toMatch(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/);
    }
    expect(setCode(123456)).not.toMatch(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/i);
  });
});
