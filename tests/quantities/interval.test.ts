import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as I from '../../generators/quantities/interval.ts';
import type { Interval } from '../../generators/quantities/step.ts';
import { repeatable } from './expressions.ts';

const anyInterval = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 0, max: 30 })).map(([low, width]): Interval => [low / 8, (low + width) / 8]);
const place = fc.double({ min: 0, max: 1, noNaN: true });
const at = ([low, high]: Interval, share: number) => Math.min(high, low + share * (high - low));
const holds = ([low, high]: Interval, value: number) => low <= value + 1e-9 * Math.abs(value) && value - 1e-9 * Math.abs(value) <= high;

describe('the result holds every result of its members', () => {
  test.each([
    ['sum', I.sum, (a: number, b: number) => a + b],
    ['difference', I.difference, (a: number, b: number) => a - b],
    ['product', I.product, (a: number, b: number) => a * b],
    ['quotient', I.quotient, (a: number, b: number) => a / b],
  ])('%s', (_, ofIntervals, ofNumbers) => {
    fc.assert(
      fc.property(anyInterval, anyInterval, place, place, (a, b, u, v) => {
        const value = ofNumbers(at(a, u), at(b, v));
        if (Number.isFinite(value)) expect(holds(ofIntervals(a, b), value)).toBe(true);
      }),
      repeatable(1000),
    );
  });

  test('power and root', () => {
    fc.assert(
      fc.property(anyInterval, place, fc.integer({ min: 1, max: 5 }), (a, u, exponent) => {
        expect(holds(I.power(a, exponent), at(a, u) ** exponent)).toBe(true);
        if (at(a, u) >= 0) expect(holds(I.sqrt(a), Math.sqrt(at(a, u)))).toBe(true);
      }),
      repeatable(1000),
    );
  });
});

describe('ends', () => {
  test('an even power over zero starts at zero', () => {
    expect(I.power([-2, 1], 2)).toEqual([0, 4]);
  });
  test('an odd power keeps its signs', () => {
    expect(I.power([-2, 1], 3)).toEqual([-8, 1]);
  });
  test('division by what may be zero can give anything', () => {
    expect(I.quotient([1, 2], [0, 1])).toEqual([-Infinity, Infinity]);
  });
  test('zero times anything is zero, though it has no bound', () => {
    expect(I.product([0, 0], [-Infinity, Infinity])).toEqual([0, 0]);
  });
  test('the hull is from the least to the greatest', () => {
    expect(I.hull([1, 2], [-1, 0], [1.5, 4])).toEqual([-1, 4]);
  });
  test('what schools put for pi holds pi, 3.14, 3.142, 3.1416 and 22/7', () => {
    for (const pi of [Math.PI, 3.14, 3.142, 3.1416, 22 / 7]) expect(holds(I.schoolPi, pi)).toBe(true);
  });
});
