import { describe, expect, it } from 'vitest';
import { along, axisFor, labelAt, valueAt } from '../../generators/figures/axis.ts';
import { streams } from '../../generators/random.ts';

const random = streams('axis').of('ranges');
const ranges = Array.from({ length: 300 }, () => {
  const size = Number(`1e${random.integer(-4, 4)}`);
  const low = random.between(-3, 10) * size;
  return [low, low + random.between(0.05, 12) * size];
});

describe('axisFor', () => {
  it('finds room for every value, and fills a third of the paper or more', () => {
    for (const values of ranges) {
      const axis = axisFor(values, 14);
      const [low, high] = values.map((value) => along(axis, value));
      expect(low).toBeGreaterThanOrEqual(-1e-6);
      expect(high).toBeLessThanOrEqual(14 + 1e-6);
      expect(high! - low!).toBeGreaterThan(12 / 2.5);
    }
  });

  it('takes 1, 2 or 5 times a power of ten for a square', () => {
    for (const values of ranges) expect(String(axisFor(values, 10).step.whole)).toMatch(/^[125]0*$/);
  });

  it('starts at zero when asked, and below zero only for values below zero', () => {
    for (const [low, high] of ranges.filter(([low]) => low! > 0)) {
      expect(axisFor([low!, high!], 12, true).first).toBe(0);
      expect(axisFor([low!, high!], 12).first).toBeGreaterThanOrEqual(0);
    }
  });

  it('writes at every line the value that stands there, in decimals of one length', () => {
    for (const values of ranges) {
      const axis = axisFor(values, 10);
      const written = Array.from({ length: 11 }, (_, square) => labelAt(axis, square));
      written.forEach((text, square) => expect(Number(text.replace('−', '-'))).toBe(valueAt(axis, square)));
      expect(new Set(written.map((text) => text.split('.')[1]?.length)).size).toBe(1);
    }
  });

  it('refuses values that span nothing', () => {
    expect(() => axisFor([], 10)).toThrow(RangeError);
    expect(() => axisFor([3, 3], 10)).toThrow(RangeError);
  });
});
