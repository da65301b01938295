import { describe, expect, it } from 'vitest';
import { screwGauge } from '../../generators/figures/screw-gauge.ts';
import { streams } from '../../generators/random.ts';
import { elements, labels, nearest, polylines, words } from './read-svg.ts';

interface Kind {
  pitch: number;
  divisions: number;
}
const kinds: Kind[] = [{ pitch: 0.5, divisions: 50 }, { pitch: 1, divisions: 100 }, { pitch: 1, divisions: 50 }];
const draw = (kind: Kind, turns: number, division: number) => screwGauge({ id: 'gauge', ...kind, turns, division }, words);
const views = kinds.flatMap((kind) => {
  const random = streams('screw gauge').of(kind.pitch, kind.divisions);
  const wires = Array.from({ length: 120 }, () => ({ kind, turns: random.integer(0, 24), division: random.integer(0, kind.divisions - 1) }));
  const zeros = [1, 2, 3, 4, 5].flatMap((n) => [{ kind, turns: 0, division: n }, { kind, turns: -1, division: kind.divisions - n }]);
  return [...wires, ...zeros, { kind, turns: 0, division: 0 }];
});

/** Marks of a part, left of the thimble's edge, by their x. */
function marks(svg: string, part: string): number[] {
  if (!elements(svg).some(({ attributes }) => attributes['data-part'] === part)) return [];
  return polylines(svg, part).map(([foot]) => foot![0]);
}

/** The main scale as an eye reads it: the last mark before the thimble's edge, counted from a number. */
function readTurns(svg: string, { pitch }: Kind): number {
  const edge = polylines(svg, 'thimble-edge')[0]![0]![0];
  const whole = marks(svg, 'main-marks');
  const sight = [...whole, ...marks(svg, 'half-marks')].filter((x) => x <= edge + 0.001).sort((a, b) => a - b);
  const number = labels(svg, 'main-number')[0]!;
  if (sight.length === 0) return -1;
  const numbered = nearest(whole, (x) => Math.abs(x - 0.6 - number.at[0]));
  const perMark = pitch === 0.5 ? 0.5 : 1;
  return (Number(number.text) + perMark * (sight.length - 1 - sight.indexOf(numbered))) / pitch;
}

/** The thimble as an eye reads it: from the nearest number, up or down, to the line at the reference line. */
function readDivision(svg: string, { divisions }: Kind): number {
  const reference = polylines(svg, 'reference')[0]![0]![1];
  const ends = polylines(svg, 'thimble-marks').sort((a, b) => b[0]![1] - a[0]![1]);
  const line = ends.findIndex(([start]) => Math.abs(start![1] - reference) < 0.001);
  if (line === -1) throw new Error('no line coincides with the reference line');
  const number = nearest(labels(svg, 'thimble-number'), ({ at }) => Math.abs(at[1] - 1 - reference));
  const numbered = nearest(ends, ([, end]) => Math.abs(end![1] - (number.at[1] - 1)));
  return (Number(number.text) + line - ends.indexOf(numbered) + divisions) % divisions;
}

describe('screwGauge', () => {
  it('reads back as it was set, with zero errors of either sign', () => {
    for (const { kind, turns, division } of views) {
      const { svg } = draw(kind, turns, division);
      expect({ kind, turns: readTurns(svg, kind), division: readDivision(svg, kind) }).toEqual({ kind, turns, division });
    }
  });

  it('stands the edge of the thimble as far from the last mark as the division says', () => {
    for (const { kind, turns, division } of views.filter(({ turns }) => turns >= 0)) {
      const { svg } = draw(kind, turns, division);
      const edge = polylines(svg, 'thimble-edge')[0]![0]![0];
      const last = Math.max(...marks(svg, 'main-marks'), ...marks(svg, 'half-marks'));
      expect((edge - last) / 6 / kind.pitch).toBeCloseTo(division / kind.divisions, 3);
    }
  });

  it('keeps ten divisions of the thimble in sight, two of them numbered', () => {
    for (const { kind, turns, division } of views) {
      const { svg } = draw(kind, turns, division);
      expect(polylines(svg, 'thimble-marks').length).toBeGreaterThan(10);
      expect(labels(svg, 'thimble-number').length).toBeGreaterThanOrEqual(2);
    }
  });

  it('never gives the reading in words', () => {
    for (const { kind, turns, division } of views) {
      const count = Math.round((turns * kind.divisions + division) * (kind.pitch / kind.divisions) * 100);
      const reading = `${Math.floor(Math.abs(count) / 100)}.${String(Math.abs(count) % 100).padStart(2, '0')}`;
      expect(draw(kind, turns, division).seen).not.toContain(reading);
    }
  });

  it('says that the zero mark is covered when the error is negative, and only then', () => {
    expect(draw(kinds[0]!, -1, 47).seen).toContain(words.screwGauge.covered);
    expect(draw(kinds[0]!, 0, 3).seen).not.toContain(words.screwGauge.covered);
  });

  it('tells whether a half-millimetre mark is uncovered', () => {
    expect(draw(kinds[0]!, 3, 12).seen).toContain(words.screwGauge.half);
    expect(draw(kinds[0]!, 2, 12).seen).toContain(words.screwGauge.noHalf);
    expect(draw(kinds[1]!, 2, 12).seen).not.toContain(words.screwGauge.noHalf);
  });

  it('refuses what no gauge can show', () => {
    expect(() => draw(kinds[0]!, 1, 50)).toThrow(RangeError);
    expect(() => draw(kinds[0]!, -2, 3)).toThrow(RangeError);
    expect(() => draw({ pitch: 0.25, divisions: 25 }, 1, 3)).toThrow(RangeError);
  });
});
