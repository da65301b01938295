import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { halfUnit, round, shift } from '../../generators/quantities/written.ts';
import { repeatable } from './expressions.ts';

describe('ties to the even digit', () => {
  // The examples of IS 2:1960, rules for rounding off numerical values.
  test.each([
    [2.651, 1, '2.7'],
    [0.3552, 2, '0.36'],
    [12.545001, 2, '12.55'],
    [3.25, 1, '3.2'],
    [12.65, 1, '12.6'],
    [3.75, 1, '3.8'],
    [16.15, 1, '16.2'],
  ])('IS 2: %d to %d decimals is %s', (value, decimals, written) => {
    expect(round(value, { decimals }, 'even')).toBe(written);
  });

  // ISO 80000-1:2009, Annex B, rule A, to the nearest ten there, here a tenth; from memory.
  test.each([
    [12.25, '12.2'],
    [12.35, '12.4'],
    [12.223, '12.2'],
    [12.251, '12.3'],
    [12.275, '12.3'],
  ])('ISO 80000-1, rule A: %d is %s', (value, written) => {
    expect(round(value, { decimals: 1 }, 'even')).toBe(written);
  });
});

// ISO 80000-1:2009, Annex B, rule B: the greater in magnitude; from memory.
test.each([
  [12.25, '12.3'],
  [12.35, '12.4'],
  [-12.25, '-12.3'],
  [12.249, '12.2'],
])('ISO 80000-1, rule B: ties away from zero, %d is %s', (value, written) => {
  expect(round(value, { decimals: 1 }, 'up')).toBe(written);
});

describe('a tie is a tie in decimal, not in binary', () => {
  test.each([
    [2.15, { decimals: 1 }, '2.2', '2.2'],
    [2.25, { decimals: 1 }, '2.2', '2.3'],
    [1.005, { decimals: 2 }, '1.00', '1.01'],
    [1.015, { decimals: 2 }, '1.02', '1.02'],
    [0.1 + 0.2 + 0.05, { decimals: 1 }, '0.4', '0.4'],
    [100 - 43.25, { decimals: 1 }, '56.8', '56.8'],
    [-2.25, { decimals: 1 }, '-2.2', '-2.3'],
    [4.975e-7, { figures: 3 }, '4.98e-7', '4.98e-7'],
    [4.985e-7, { figures: 3 }, '4.98e-7', '4.99e-7'],
  ])('%d to %j', (value, digits, even, up) => {
    expect([round(value, digits, 'even'), round(value, digits, 'up')]).toEqual([even, up]);
  });

  test('whatever the decimal: any tie typed as a number goes where it should', () => {
    fc.assert(
      fc.property(fc.integer({ min: -99999, max: 99999 }), fc.integer({ min: 0, max: 4 }), (whole, decimals) => {
        const tie = `${whole}5e-${decimals + 1}`;
        const [even, up] = [round(Number(tie), { decimals }, 'even'), round(Number(tie), { decimals }, 'up')].map((written) => Math.round(Math.abs(Number(written)) * 10 ** decimals));
        expect(up).toBe(Math.abs(whole) + 1);
        expect(even! % 2).toBe(0);
        expect(Math.abs(even! - Math.abs(whole) - 0.5)).toBe(0.5);
      }),
      repeatable(500),
    );
  });
});

describe('digits', () => {
  test.each([
    [2, { decimals: 1 }, '2.0'],
    [0.6, { decimals: 2 }, '0.60'],
    [-0.04, { decimals: 1 }, '0.0'],
    [-0.04, { figures: 1 }, '-0.04'],
    [0, { figures: 3 }, '0.00'],
    [9.996, { figures: 3 }, '10.0'],
    [0.09996, { figures: 3 }, '0.100'],
    [123456, { figures: 3 }, '123000'],
    [1234567, { figures: 3 }, '1.23e6'],
    [0.00123, { figures: 3 }, '0.00123'],
    [0.000123, { figures: 3 }, '1.23e-4'],
    [4.9e-7, { figures: 3 }, '4.90e-7'],
    [-4.9e-7, { figures: 3 }, '-4.90e-7'],
  ])('%d with %j is %s', (value, digits, written) => {
    expect(round(value, digits, 'even')).toBe(written);
  });

  test.each([NaN, Infinity, -Infinity])('%d cannot be rounded', (value) => {
    expect(() => round(value, { decimals: 1 }, 'even')).toThrow(RangeError);
  });

  test('a negative number is written as the positive one with a minus', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.integer({ min: 1, max: 6 }), fc.constantFrom('even' as const, 'up' as const), (value, figures, ties) => {
        expect(round(-value, { figures }, ties)).toBe(`-${round(value, { figures }, ties)}`);
      }),
      repeatable(500),
    );
  });
});

describe('the decimal point moved', () => {
  test.each([
    ['43.2', -2, '0.432'],
    ['60.0', -2, '0.600'],
    ['0.376', -3, '0.376e-3'],
    ['-0.03', -3, '-0.03e-3'],
    ['1.20', -3, '0.00120'],
    ['4.90e-7', 3, '4.90e-4'],
    ['4.90e-7', 7, '4.90'],
    ['0.00', -3, '0.00000'],
    ['43.2', 0, '43.2'],
  ])('%s by %d is %s', (written, tens, moved) => {
    expect(shift(written, tens)).toBe(moved);
  });

  test('to a smaller number: the value times a power of ten, no digit lost or added', () => {
    const digitsOf = (written: string) => written.split('e')[0]!.replace(/^-?0*\.?0*|\./g, '');
    fc.assert(
      fc.property(fc.integer({ min: -99999, max: 99999 }), fc.integer({ min: 0, max: 4 }), fc.integer({ min: -9, max: 0 }), (whole, decimals, tens) => {
        const written = new Decimal(whole).div(10 ** decimals).toFixed(decimals);
        const moved = shift(written, tens);
        expect(new Decimal(moved).eq(new Decimal(written).mul(new Decimal(10).pow(tens)))).toBe(true);
        expect(digitsOf(moved)).toBe(digitsOf(written));
      }),
      repeatable(500),
    );
  });
});

test.each([
  ['43.2', 0.05],
  ['4.97e-7', 0.5e-9],
  ['100', 0.5],
])('half a unit in the last place of %s is %d', (written, half) => {
  expect(halfUnit(written)).toBe(half);
});
