import { describe, expect, test } from 'vitest';
import { type Bridge, circuit, current, deflection, type Gaps } from '../../generators/apparatus/bridge.ts';
import { deadBand, nullPlace } from '../../generators/apparatus/null.ts';
import { streams } from '../../generators/random.ts';
import { ideal } from './ideal.ts';
import { anyGaps, wildBridge } from './random-bridge.ts';

const cases = Array.from({ length: 300 }, (_, i) => {
  const random = streams('nulls').of(i);
  return { bridge: wildBridge(random), gaps: anyGaps(random) };
});

/** The place itself, where the scale reaches it. */
function expectNull(bridge: Bridge, gaps: Gaps, place: number): void {
  expect(Math.abs(nullPlace(bridge, gaps) - Math.min(100, Math.max(0, place)))).toBeLessThan(1e-9);
}

/** Left and right gap with their joints. */
function whole(bridge: Bridge, gaps: Gaps): [left: number, right: number] {
  return [gaps.left + bridge.terminals.left.inSeries, gaps.right + bridge.terminals.right.inSeries];
}

describe('the null', () => {
  test('on an even wire solves P (100 + β − x) = Q (x + α), read on a shifted scale', () => {
    for (const { bridge: uneven, gaps } of cases) {
      const bridge = { ...uneven, profile: { a: 0, b: 0 } };
      const [p, q] = whole(bridge, gaps);
      const { left: alpha, right: beta } = bridge.endCorrection;
      const place = (p * (100 + beta) - q * alpha) / (p + q);
      expectNull(bridge, gaps, Math.min(100, Math.max(0, place)) - bridge.scaleOffset);
    }
  });

  test('on a wire that thins evenly from one end is the root of a quadratic', () => {
    for (const { bridge: uneven, gaps } of cases) {
      const bridge = { ...uneven, profile: { a: uneven.profile.a || 0.1, b: 0 }, endCorrection: { left: 0, right: 0 } };
      const [p, q] = whole(bridge, gaps);
      const a = bridge.profile.a;
      // (1 + a) u − a u² = P/(P + Q), the root between 0 and 1, in the form that does not cancel
      const share = p / (p + q);
      const u = (2 * share) / (1 + a + Math.sqrt((1 + a) * (1 + a) - 4 * a * share));
      expectNull(bridge, gaps, 100 * u - bridge.scaleOffset);
    }
  });

  test('divides any wire as the gaps are', () => {
    const onWire = cases.filter(({ bridge, gaps }) => {
      const place = nullPlace(bridge, gaps);
      return Math.min(place, place + bridge.scaleOffset) > 1e-6 && Math.max(place, place + bridge.scaleOffset) < 100 - 1e-6;
    });
    expect(onWire.length).toBeGreaterThan(200);
    for (const { bridge, gaps } of onWire) {
      const { left, right, wireLeft, wireRight } = circuit(bridge, gaps, nullPlace(bridge, gaps));
      expect(Math.abs(left / (left + right) - wireLeft / (wireLeft + wireRight))).toBeLessThan(1e-11);
    }
  });

  test('is the left end with the left gap joined and the right end with it open', () => {
    expect(nullPlace(ideal, { left: 0, right: 3 })).toBeCloseTo(0, 12);
    expect(nullPlace(ideal, { left: Infinity, right: 3 })).toBeCloseTo(100, 12);
    expect(nullPlace(ideal, { left: 3, right: 0 })).toBeCloseTo(100, 12);
    expect(nullPlace(ideal, { left: 3, right: Infinity })).toBeCloseTo(0, 12);
  });

  test('is nowhere when both gaps are open or both are joined', () => {
    expect(() => nullPlace(ideal, { left: Infinity, right: Infinity })).toThrow('no null point');
    expect(() => nullPlace(ideal, { left: 0, right: 0 })).toThrow('no null point');
  });

  test('does not care for cell, galvanometer, or how many ohms a cm of wire has', () => {
    for (const { bridge, gaps } of cases) {
      const other = { ...bridge, ohmsPerCm: 2 * bridge.ohmsPerCm, cell: ideal.cell, galvanometer: ideal.galvanometer };
      expect(nullPlace(other, gaps)).toBe(nullPlace(bridge, gaps));
    }
  });
});

describe('end corrections', () => {
  const withEnds = (left: number, right: number): Bridge => ({ ...ideal, endCorrection: { left, right } });
  const direct = (bridge: Bridge, r: number, x: number) => nullPlace(bridge, { left: r, right: x });
  const swapped = (bridge: Bridge, r: number, x: number) => nullPlace(bridge, { left: x, right: r });

  // Worked by hand from P (100 + β − l) = Q (l + α) for X = 2.5 Ω, then X from the formula without corrections.
  test.each([
    { ends: [0.3, 0.5], r: 1, l: 28.5, x: 2.5088, interchanged: 2.5336 },
    { ends: [0.3, 0.5], r: 2.5, l: 50.1, x: 2.49, interchanged: 2.51 },
    { ends: [0.3, 0.5], r: 5, l: 66.9, x: 2.4738, interchanged: 2.4963 },
    { ends: [1, 1], r: 1, l: 28.143, x: 2.5533, interchanged: 2.5533 },
    { ends: [0.5, -0.5], r: 1, l: 28.071, x: 2.5623, interchanged: 2.4398 },
  ])('of $ends cm shift the result with R = $r Ω as worked by hand', ({ ends, r, l, x, interchanged }) => {
    const bridge = withEnds(ends[0]!, ends[1]!);
    const [one, two] = [direct(bridge, r, 2.5), swapped(bridge, r, 2.5)];
    expect(Math.abs(one - l)).toBeLessThan(0.000501);
    expect(Math.abs((r * (100 - one)) / one - x)).toBeLessThan(0.0000501);
    expect(Math.abs((r * two) / (100 - two) - interchanged)).toBeLessThan(0.0000501);
  });

  test('that are a pure shift of the scale go out when l and 100 − l′ are averaged', () => {
    for (const bridge of [withEnds(0.5, -0.5), { ...ideal, scaleOffset: 0.5 }]) {
      const mean = (direct(bridge, 1, 2.5) + 100 - swapped(bridge, 1, 2.5)) / 2;
      expect((100 - mean) / mean).toBeCloseTo(2.5, 12);
    }
  });

  test('of 2 and 1 cm give the unknown of the joint entrance examination: 58/3 Ω against 15 Ω at 43 cm', () => {
    expect(direct(withEnds(2, 1), 15, 58 / 3)).toBeCloseTo(43, 12);
  });

  test('of 1 cm each give the nulls of the 2016 national physics olympiad: 50 and 100 Ω at 33 cm, interchanged 67 cm', () => {
    expect(direct(withEnds(1, 1), 50, 100)).toBeCloseTo(33, 12);
    expect(swapped(withEnds(1, 1), 50, 100)).toBeCloseTo(67, 12);
  });
});

describe('along the wire', () => {
  test('the current only rises, whatever the bridge is', () => {
    for (const { bridge, gaps } of cases.slice(0, 100)) {
      const along = Array.from({ length: 101 }, (_, jockey) => current(bridge, gaps, jockey));
      expect(along).toEqual([...along].sort((a, b) => a - b));
    }
  });

  test('the dead band holds the null and ends where the deflection is just seen', () => {
    let bothEnds = 0;
    for (const { bridge, gaps } of cases) {
      const [low, high] = deadBand(bridge, gaps);
      const place = nullPlace(bridge, gaps);
      expect(low).toBeLessThanOrEqual(place + 1e-9);
      expect(high).toBeGreaterThanOrEqual(place - 1e-9);
      const [from, to] = [Math.max(0, -bridge.scaleOffset), Math.min(100, 100 - bridge.scaleOffset)];
      if (low < from + 1e-9 || high > to - 1e-9) continue;
      bothEnds += 1;
      expect(deflection(bridge, gaps, low)).toBeCloseTo(-0.25, 6);
      expect(deflection(bridge, gaps, high)).toBeCloseTo(0.25, 6);
    }
    expect(bothEnds).toBeGreaterThan(150);
  });
});
