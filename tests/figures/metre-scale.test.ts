import { describe, expect, it } from 'vitest';
import { metreScale } from '../../generators/figures/metre-scale.ts';
import { streams } from '../../generators/random.ts';
import { elements, labels, polylines, readScale, words } from './read-svg.ts';

const random = streams('metre scale').of('readings');
const onMarks = Array.from({ length: 100 }, () => random.integer(0, 1000) / 10);
const anywhere = Array.from({ length: 100 }, () => random.between(0, 100));
const draw = (pointerCm: number) => metreScale({ id: 'scale', pointerCm }, words);
const pointerX = (svg: string) => polylines(svg, 'pointer')[0]![0]![0];

describe('metreScale', () => {
  it('shows the pointer where it stands, on and between marks and at both ends', () => {
    for (const cm of [...onMarks, ...anywhere, 0, 100]) {
      const { svg } = draw(cm);
      expect(readScale(labels(svg, 'scale-number'), 0, pointerX(svg))).toBeCloseTo(cm, 3);
    }
  });

  it('puts a mark under the pointer whenever the reading is a whole millimetre, and ten divisions to a number', () => {
    for (const cm of onMarks) {
      const { svg } = draw(cm);
      const marks = polylines(svg, 'scale').map(([top]) => top![0]);
      expect(Math.min(...marks.map((x) => Math.abs(x - pointerX(svg))))).toBeLessThan(0.002);
      const [one, two] = labels(svg, 'scale-number').map(({ at }) => at[0]);
      expect(marks.filter((x) => x >= one! && x < two!)).toHaveLength(10);
    }
  });

  it('shows 4 to 6 cm at 1.5 mm a division or more, two numbers at least, and a pointer no wider than 0.2 mm', () => {
    for (const cm of onMarks) {
      const { svg } = draw(cm);
      const marks = polylines(svg, 'scale').map(([top]) => top![0]);
      expect(marks[1]! - marks[0]!).toBeGreaterThanOrEqual(1.5);
      expect(marks.length).toBeGreaterThan(40);
      expect(marks.length).toBeLessThan(64);
      expect(labels(svg, 'scale-number').length).toBeGreaterThanOrEqual(2);
      const pointer = elements(svg).find(({ attributes }) => attributes['data-part'] === 'pointer')!;
      expect(Number(pointer.attributes['stroke-width'])).toBeLessThanOrEqual(0.2);
    }
  });

  it('never gives the reading in words', () => {
    for (const cm of onMarks.filter((value) => !Number.isInteger(value))) {
      const { seen, svg } = draw(cm);
      expect(seen).not.toContain(String(cm));
      expect(svg).not.toContain(`>${cm}<`);
    }
  });

  it('counts the small divisions from the number before', () => {
    expect(draw(43.2).seen).toMatch(/at small division 2 after the mark numbered 43\./);
    expect(draw(43).seen).toMatch(/at the mark numbered 43\./);
    expect(draw(43.97).seen).toMatch(/between small divisions 9 and 10 after the mark numbered 43, nearer to 10\./);
    expect(draw(43.25).seen).toMatch(/midway between small divisions 2 and 3 after the mark numbered 43\./);
  });

  it('refuses a place off the scale', () => {
    for (const cm of [-0.1, 100.1, NaN]) expect(() => draw(cm)).toThrow(RangeError);
  });
});
