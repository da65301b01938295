import { describe, expect, test } from 'vitest';
import { type Bridge, deflection, type Gaps, makeBridge } from '../../generators/apparatus/bridge.ts';
import { type FaultName, withFault } from '../../generators/apparatus/faults.ts';
import { connectionCheck, needle } from '../../generators/apparatus/galvanometer.ts';
import { deadBand, nullPlace } from '../../generators/apparatus/null.ts';
import { streams } from '../../generators/random.ts';
import { ideal } from './ideal.ts';
import { bench } from './tables.ts';

const gaps: Gaps = { left: 2.5, right: 4 };
const bridges = Array.from({ length: 100 }, (_, i) => makeBridge(bench, streams('checks').of(i)));
const random = streams('checks').of('loose joints');

function sides(bridge: Bridge, put = gaps): [left: string, right: string] {
  const { left, right } = connectionCheck(bridge, bench, put);
  return [left.side, right.side];
}

describe('the connection check', () => {
  test('of a sound bridge shows opposite sides, on the scale at least at one end', () => {
    for (const bridge of bridges) {
      expect(sides(bridge)).toEqual(['left', 'right']);
      const { left, right } = connectionCheck(bridge, bench, gaps);
      expect(left.offScale && right.offScale).toBe(false);
    }
  });

  const same: [FaultName, 'left' | 'right'][] = [
    ['left gap open', 'left'],
    ['right gap shorted', 'left'],
    ['right gap open', 'right'],
    ['left gap shorted', 'right'],
  ];
  test.each(same)('with the %s shows the %s at both ends', (fault, side) => {
    for (const bridge of bridges) expect(sides(withFault(bridge, fault, bench, random))).toEqual([side, side]);
  });

  test.each(['cell branch open', 'galvanometer branch open'] as const)('with the %s shows nothing anywhere', (fault) => {
    for (const bridge of bridges) expect(sides(withFault(bridge, fault, bench, random))).toEqual(['none', 'none']);
  });

  const reversals = ['cell reversed', 'galvanometer reversed'] as const;
  test.each(reversals)('with the %s has its sides swapped, and null and dead band stay', (fault) => {
    for (const bridge of bridges) {
      const other = withFault(bridge, fault, bench, random);
      expect(sides(other)).toEqual(['right', 'left']);
      expect(nullPlace(other, gaps)).toBe(nullPlace(bridge, gaps));
      expect(deadBand(other, gaps)).toEqual(deadBand(bridge, gaps));
    }
  });

  test('with a known resistance that does not suit still shows opposite sides, the null near an end', () => {
    for (const bridge of bridges) {
      const unsuitable = { left: 20, right: 4 };
      expect(sides(bridge, unsuitable)).toEqual(['left', 'right']);
      expect(nullPlace(bridge, unsuitable)).toBeGreaterThan(80);
    }
  });

  test('with a loose joint still shows opposite sides, and the null moves away from the good gap', () => {
    for (const bridge of bridges) {
      const loose = withFault(bridge, 'left joint loose', bench, random);
      expect(sides(loose)).toEqual(['left', 'right']);
      expect(nullPlace(loose, gaps)).toBeGreaterThan(nullPlace(bridge, gaps) + 5);
    }
  });
});

describe('the needle', () => {
  test('is judged to the half division and stops at the end of the scale', () => {
    for (let jockey = 0; jockey <= 100; jockey += 0.5) {
      const exact = deflection(ideal, gaps, jockey);
      const shown = needle(ideal, gaps, jockey);
      expect(Number(shown.divisions)).toBeLessThanOrEqual(30);
      expect(shown.offScale).toBe(Math.abs(exact) > 30);
      if (!shown.offScale) expect(Math.abs(Number(shown.divisions) - Math.abs(exact))).toBeLessThanOrEqual(0.25);
    }
  });

  test('stands at zero on the null', () => {
    expect(needle(ideal, gaps, nullPlace(ideal, gaps))).toEqual({ side: 'none', divisions: '0.0', offScale: false });
  });

  test('without the protective resistance lies at the end of the scale at both ends of the wire', () => {
    for (const bridge of bridges)
      expect([needle(bridge, gaps, 5).offScale, needle(bridge, gaps, 95).offScale]).toEqual([true, true]);
  });
});
