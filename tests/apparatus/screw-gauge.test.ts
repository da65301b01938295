import { describe, expect, test } from 'vitest';
import { gaugeShows, makeScrewGauge, readGauge, readZero, type ScrewGauge } from '../../generators/apparatus/screw-gauge.ts';
import { streams } from '../../generators/random.ts';
import { bench } from './tables.ts';

const half: ScrewGauge = { pitch: '0.5', divisions: 50, leastCount: '0.01', zeroOffset: 0, scaleError: 0 };
const one: ScrewGauge = { ...half, pitch: '1', divisions: 100 };

describe('the scales of a screw gauge', () => {
  test('show the last whole pitch passed, and the rest on the circular scale', () => {
    expect(gaugeShows(half, 0.38)).toEqual({ main: '0.0', division: 38, total: '0.38' });
    expect(gaugeShows(half, 0.77)).toEqual({ main: '0.5', division: 27, total: '0.77' });
    expect(gaugeShows(half, 0.5)).toEqual({ main: '0.5', division: 0, total: '0.50' });
    expect(gaugeShows(one, 0.77)).toEqual({ main: '0', division: 77, total: '0.77' });
    expect(gaugeShows(one, 2.03)).toEqual({ main: '2', division: 3, total: '2.03' });
  });

  test('carry into the next pitch when the last division rounds up', () => {
    expect(gaugeShows(half, 0.4951)).toEqual({ main: '0.5', division: 0, total: '0.50' });
    expect(gaugeShows(half, 0.4949)).toEqual({ main: '0.0', division: 49, total: '0.49' });
  });

  test('agree with each other at every opening up to 25 mm', () => {
    for (const gauge of [half, one])
      for (let count = 0; count <= 2500; count++) {
        const { main, division, total } = gaugeShows(gauge, count / 100);
        expect(Math.round(100 * Number(main)) + division).toBe(count);
        expect(Math.round(100 * Number(total))).toBe(count);
      }
  });

  test('with a finer circular scale show a finer least count', () => {
    const fine: ScrewGauge = { ...half, divisions: 100, leastCount: '0.005' };
    expect(gaugeShows(fine, 0.377)).toEqual({ main: '0.0', division: 75, total: '0.375' });
  });

  // A worked example in use at schools: main scale 0.5 mm, division 27, least count 0.01 mm, zero error +0.05 mm: 0.72 mm.
  test('give 0.72 mm for 0.5 mm, division 27 and a zero error of +0.05 mm', () => {
    const gauge = { ...half, zeroOffset: 0.05 };
    const { main, division, total } = gaugeShows(gauge, 0.72 + gauge.zeroOffset);
    expect([main, division, readZero(gauge).error]).toEqual(['0.5', 27, '0.05']);
    expect(Math.round(100 * (Number(total) - Number(readZero(gauge).error)))).toBe(72);
  });
});

describe('the zero reading', () => {
  test('is positive short of the line, with the division itself', () => {
    expect(readZero({ ...half, zeroOffset: 0.03 })).toEqual({ zero: 'short of the line', division: 3, error: '0.03' });
  });

  test('is negative past the line, where the division counts back from a full turn', () => {
    expect(readZero({ ...half, zeroOffset: -0.03 })).toEqual({ zero: 'past the line', division: 47, error: '-0.03' });
    expect(readZero({ ...one, zeroOffset: -0.03 })).toEqual({ zero: 'past the line', division: 97, error: '-0.03' });
  });

  test('is none at the line', () => {
    expect(readZero({ ...half, zeroOffset: -0.004 })).toEqual({ zero: 'at the line', division: 0, error: '0.00' });
  });
});

describe('screw gauges of the bench', () => {
  const made = Array.from({ length: 2000 }, (_, i) => makeScrewGauge(bench, streams('gauges').of(i)));

  test('have the zero errors of the list, each of them', () => {
    const read = new Set(made.map((gauge) => Number(readZero(gauge).error)));
    expect([...read].sort((a, b) => a - b)).toEqual(bench.screwGauge.zeroErrors.map(Number));
  });

  test('read a diameter to within the least count, their limit of error and the hand, once corrected', () => {
    const random = streams('gauges').of('hands');
    for (const gauge of made) {
      const { total } = readGauge(gauge, bench, 0.376, 'careful', random);
      const corrected = Number(total) - Number(readZero(gauge).error);
      const hand = 6 * bench.hands.careful.screwGauge;
      expect(Math.abs(corrected - 0.376)).toBeLessThan(0.005 + 0.005 + bench.screwGauge.limitOfError + hand);
    }
  });

  test('refuse a pitch that their divisions cannot share out', () => {
    const odd = { ...bench, screwGauge: { ...bench.screwGauge, pitch: '0.5', divisions: 30 } };
    expect(() => makeScrewGauge(odd, streams('gauges').of('odd'))).toThrow('cannot share out');
  });
});
