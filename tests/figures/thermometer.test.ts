import { describe, expect, it } from 'vitest';
import { thermometer } from '../../generators/figures/thermometer.ts';
import { streams } from '../../generators/random.ts';
import { labels, polylines, readScale, words } from './read-svg.ts';

const random = streams('thermometer').of('temperatures');
const temperatures = Array.from({ length: 100 }, () => random.integer(10, 190) / 2);
const draw = (celsius: number) => thermometer({ id: 'thermometer', celsius }, words);

describe('thermometer', () => {
  it('ends its thread at the temperature', () => {
    for (const celsius of temperatures) {
      const { svg } = draw(celsius);
      expect(readScale(labels(svg, 'number'), 0, polylines(svg, 'thread')[0]![1]![0])).toBeCloseTo(celsius, 3);
    }
  });

  it('has a mark for every degree, 1.5 mm apart or more', () => {
    const marks = polylines(draw(27).svg, 'marks').map(([foot]) => foot![0]);
    expect(marks).toHaveLength(31);
    expect(marks[1]! - marks[0]!).toBeGreaterThanOrEqual(1.5);
  });

  it('never gives the temperature in words', () => {
    for (const celsius of temperatures.filter((value) => value % 10 !== 0 && value > 10)) {
      expect(draw(celsius).seen).not.toMatch(new RegExp(`\\b${String(celsius).replace('.', '\\.')}\\b`));
    }
  });

  it('refuses what it is not drawn for', () => {
    for (const celsius of [4, 96, NaN]) expect(() => draw(celsius)).toThrow(RangeError);
  });
});
