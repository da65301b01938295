import { describe, expect, it } from 'vitest';
import { fill } from '../../generators/figures/fill.ts';
import { symbols, words as letters } from '../../generators/figures/lettering.ts';
import { mm } from '../../generators/figures/svg.ts';

describe('fill', () => {
  it('puts every value in its place, and refuses a place without one', () => {
    expect(fill('{a} and {b}, {a}', { a: 1, b: 'two' })).toBe('1 and two, 1');
    expect(() => fill('{missing}', {})).toThrow(RangeError);
  });
});

describe('symbols', () => {
  const sloping = (expression: string) => [...symbols([0, 0], expression).matchAll(/<tspan[^>]*>(.+?)<\/tspan>/g)].map(([, letter]) => letter);

  it('slopes quantities and nothing else', () => {
    expect(sloping('l/(100 − l)')).toEqual(['l', 'l']);
    expect(sloping('100 cm − l')).toEqual(['l']);
    expect(sloping('ΔX = 3.31 Ω')).toEqual(['X']);
    expect(sloping('ΔL = 0.8 m')).toEqual(['L']);
    expect(sloping('r₁ + r₂')).toEqual(['r', 'r']);
    expect(sloping('a & b < c')).toEqual(['a', 'b', 'c']);
    expect(sloping('Δ(1/R)')).toEqual(['R']);
  });
});

describe('words', () => {
  it('escapes what is not ours', () => {
    expect(letters([0, 0], '<b> & "c"')).toContain('>&lt;b&gt; &amp; &quot;c&quot;<');
  });
});

describe('mm', () => {
  it('writes micrometres, no negative zero, and refuses what is no number', () => {
    expect([mm(1 / 3), mm(-0.0001), mm(12)]).toEqual(['0.333', '0', '12']);
    expect(() => mm(NaN)).toThrow(RangeError);
  });
});
