import { Interval as Outside, add, div, mul, pow, sub } from 'interval-arithmetic';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formula } from '../../generators/quantities/formula.ts';
import type { Interval } from '../../generators/quantities/step.ts';
import { streams } from '../../generators/random.ts';
import { anyExpression, anyScope, fullyBracketed, names, repeatable } from './expressions.ts';
import { expectWithin } from './numerical.ts';

const make = (text: string, ...known: string[]) => formula(text, new Set(known));

describe('the range where each quantity stands once is that of interval-arithmetic', () => {
  const outside = (low: number, high: number): Outside => new Outside(low, high);
  const known = ['R', 'r', 'l', 'd', 'X', 'L', 'a', 'b'];

  test.each<[string, (...args: Outside[]) => Outside]>([
    ['R * r / l', (R, r, l) => div(mul(R!, r!), l!)],
    ['X - a', (X, a) => sub(X!, a!)],
    ['-(a - b) * R', (a, b, R) => mul(sub(b!, a!), R!)],
    ['pi * d^2 * X / (4 * L)', (d, X, L) => div(mul(mul(outside(3.14, 22 / 7), pow(d!, 2)), X!), mul(outside(4, 4), L!))],
    ['R * (a + b) / (l - d)', (R, a, b, l, d) => div(mul(R!, add(a!, b!)), sub(l!, d!))],
  ])('%s', (text, other) => {
    const random = streams('images').of(text);
    const made = make(text, ...known);
    for (let i = 0; i < 200; i++) {
      const args = made.names.map((name): Interval => {
        const middle = name === 'l' ? random.between(6, 9) : random.between(1, 5);
        return [middle * (1 - random.between(0, 0.05)), middle * (1 + random.between(0, 0.05))];
      });
      const [low, high] = made.range(args);
      const { lo, hi } = other(...args.map((arg) => outside(...arg)));
      expectWithin(low, lo, 1e-13);
      expectWithin(high, hi, 1e-13);
    }
  });

  // R from 1.98 to 2.02 Ω and l from 42.4 to 42.6 cm: the least and the greatest X stand at two corners.
  test('a quantity that stands twice costs nothing where the signs of the partials are proved', () => {
    const [low, high] = make('R * (100 - l) / l', 'R', 'l').range([[1.98, 2.02], [42.4, 42.6]]);
    expect([low, high]).toEqual([(1.98 * (100 - 42.6)) / 42.6, (2.02 * (100 - 42.4)) / 42.4]);
  });
});

describe('any range', () => {
  test('holds the value at every point of its box', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyExpression, anyScope, fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: names.length, maxLength: names.length }), (expression, scope, places) => {
        const made = formula(fullyBracketed(expression), new Set(names));
        const half = 0.02;
        const box = made.names.map((name): Interval => [scope[name]! - half, scope[name]! + half]);
        const value = made.value(made.names.map((name) => scope[name]! + half * places[names.indexOf(name)]!));
        if (!Number.isFinite(value)) return;
        compared++;
        const [low, high] = made.range(box);
        const noise = 1e-9 * Math.abs(value);
        expect(low - noise <= value && value <= high + noise, `${made.text}: ${value} in ${low} to ${high}`).toBe(true);
      }),
      repeatable(2000),
    );
    expect(compared).toBeGreaterThan(1000);
  });

  test('a name that begins like pi is not pi', () => {
    expect(make('pitch - pitch / 2', 'pitch').range([[1, 2]])).toEqual([0.5, 1]);
  });
  test('pi is what schools put for it', () => {
    expect(make('pi * x', 'x').range([[2, 2]])).toEqual([6.28, 44 / 7]);
  });
  test('division by what may be zero has no bound', () => {
    expect(make('1 / x', 'x').range([[-1, 1]])).toEqual([-Infinity, Infinity]);
  });
});
