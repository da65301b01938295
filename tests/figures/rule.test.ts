import { describe, expect, it } from 'vitest';
import { rule } from '../../generators/figures/rule.ts';
import { streams } from '../../generators/random.ts';
import { labels, polylines, readScale, words } from './read-svg.ts';

const random = streams('rule').of('wires');
const wires = Array.from({ length: 200 }, () => {
  const leftCm = random.integer(0, 400) / 10;
  return { leftCm, rightCm: leftCm + random.integer(50, 550) / 10 };
});
const draw = (wire: { leftCm: number; rightCm: number }) => rule({ id: 'rule', ...wire }, words);
const read = (svg: string, part: string) => readScale(labels(svg, `${part}-number`), 0, polylines(svg, `${part}-edge`)[0]![0]![0]);

describe('rule', () => {
  it('shows the inner edges of both terminals where they stand', () => {
    for (const wire of wires) {
      const { svg } = draw(wire);
      expect(read(svg, 'left')).toBeCloseTo(wire.leftCm, 3);
      expect(read(svg, 'right')).toBeCloseTo(wire.rightCm, 3);
    }
  });

  it('puts each terminal outside the edge that counts', () => {
    for (const wire of wires) {
      const { svg } = draw(wire);
      const outwards = (part: string) => polylines(svg, `${part}-terminal`)[0]![1]![0] - polylines(svg, `${part}-edge`)[0]![0]![0];
      expect(outwards('left')).toBeLessThan(0);
      expect(outwards('right')).toBeGreaterThan(0);
    }
  });

  it('never gives a reading or the length in words', () => {
    for (const { leftCm, rightCm } of wires) {
      const { seen } = draw({ leftCm, rightCm });
      const decimals = [leftCm, rightCm, rightCm - leftCm].map((cm) => String(Math.round(10 * cm) / 10)).filter((text) => text.includes('.'));
      for (const text of decimals) expect(seen).not.toContain(text);
    }
  });

  it('refuses terminals in the wrong order', () => {
    expect(() => draw({ leftCm: 60, rightCm: 40 })).toThrow(RangeError);
  });
});
