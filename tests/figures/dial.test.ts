import { describe, expect, it } from 'vitest';
import { dial } from '../../generators/figures/dial.ts';
import type { Point } from '../../generators/figures/svg.ts';
import { streams } from '../../generators/random.ts';
import { elements, labels, nearest, polylines, words } from './read-svg.ts';

const random = streams('dial').of('deflections');
const onScale = Array.from({ length: 150 }, () => random.between(-30, 30));
const draw = (deflection: number) => dial({ id: 'dial', deflection }, words);

/** The angle in radians from one line to another, clockwise. */
function turnOf([a, b]: Point[], [c, d]: Point[]): number {
  const angle = (from: Point, to: Point) => Math.atan2(to[0] - from[0], from[1] - to[1]);
  return angle(a!, b!) - angle(c!, d!);
}

/** Divisions from the zero mark to the needle, by the turn of the last mark against the first. */
function read(svg: string): number {
  const marks = polylines(svg, 'marks');
  const zero = nearest(labels(svg, 'number').filter(({ text }) => text === '0'), () => 0);
  const middle = nearest(marks, ([foot]) => Math.abs(foot![0] - zero.at[0]));
  const division = turnOf(marks.at(-1)!, marks[0]!) / (marks.length - 1);
  return turnOf(polylines(svg, 'needle')[0]!, middle) / division;
}

describe('dial', () => {
  it('turns the needle to its deflection', () => {
    // Places are rounded to a micrometre, marks are 4 mm long: a hundredth of a division is what can be measured.
    for (const deflection of onScale) expect(Math.abs(read(draw(deflection).svg) - deflection)).toBeLessThan(0.02);
  });

  it('turns to the right for a positive deflection', () => {
    const middle = labels(draw(0).svg, 'number').find(({ text }) => text === '0')!.at[0];
    const tip = (deflection: number) => polylines(draw(deflection).svg, 'needle')[0]![1]![0];
    expect(tip(5)).toBeGreaterThan(middle);
    expect(tip(-5)).toBeLessThan(middle);
  });

  it('has 30 divisions on each side, and a needle no wider than 0.2 mm at the marks', () => {
    const { svg } = draw(4);
    expect(polylines(svg, 'marks')).toHaveLength(61);
    expect(labels(svg, 'number').map(({ text }) => text)).toEqual(['30', '20', '10', '0', '10', '20', '30']);
    const needle = elements(svg).find(({ attributes }) => attributes['data-part'] === 'needle')!;
    expect(Number(needle.attributes['stroke-width'])).toBeLessThanOrEqual(0.2);
  });

  it('lays the needle against a stop past the last mark, however large the current', () => {
    for (const deflection of [31, 400, -31, -1e6]) {
      const { svg, seen } = draw(deflection);
      expect(Math.abs(read(svg))).toBeGreaterThan(30.5);
      expect(Math.abs(read(svg))).toBeLessThan(33);
      expect(seen).toContain(`stop on the ${deflection < 0 ? 'left' : 'right'} side`);
    }
  });

  it('tells the side and the marks, never the deflection', () => {
    for (const deflection of [11, 13, 17, 24, 29]) {
      for (const side of [1, -1]) {
        const { seen } = draw(side * deflection);
        expect(seen).not.toMatch(new RegExp(`\\b${deflection}\\b`));
        expect(seen).toContain(side < 0 ? 'left side' : 'right side');
      }
    }
    expect(draw(0).seen).toContain(words.dial.zero);
  });
});
