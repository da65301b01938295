import { describe, expect, it } from 'vitest';
import { plugBox } from '../../generators/figures/plug-box.ts';
import { streams } from '../../generators/random.ts';
import { elements, labels, nearest, words } from './read-svg.ts';

const random = streams('plug box').of('settings');
const all = ['0.1', '0.2', '0.2', '0.5', '1', '2', '2', '5', '10', '20', '20', '50'];
const settings = Array.from({ length: 150 }, () => {
  const plugs = all.slice(0, random.integer(1, all.length));
  return { plugs, out: plugs.map((_, i) => i).filter(() => random.uniform() < 0.4) };
});
const draw = (setting: { plugs: string[]; out: number[] }) => plugBox({ id: 'box', ...setting }, words);

/** Values engraved right below the holes of a kind. */
function engraved(svg: string, part: string): string[] {
  const holes = elements(svg).filter(({ attributes }) => attributes['data-part'] === part);
  return holes.map(({ attributes }) => {
    const label = nearest(labels(svg, 'value'), ({ at }) => Math.hypot(at[0] - Number(attributes.cx), at[1] - 9 - Number(attributes.cy)));
    expect(label.at[0]).toBeCloseTo(Number(attributes.cx), 3);
    return label.text;
  });
}

describe('plugBox', () => {
  it('leaves open just the holes whose plugs are out, each with its value below', () => {
    for (const { plugs, out } of settings) {
      const { svg } = draw({ plugs, out });
      expect(engraved(svg, 'open').sort()).toEqual(out.map((i) => plugs[i]).sort());
      expect(engraved(svg, 'plug').sort()).toEqual(plugs.filter((_, i) => !out.includes(i)).sort());
    }
  });

  it('lets the holes follow each other along the brass, to and fro', () => {
    const holes = elements(draw({ plugs: all, out: [] }).svg).filter(({ attributes }) => attributes['data-part'] === 'plug');
    const at = holes.map(({ attributes }) => [Number(attributes.cx), Number(attributes.cy)] as const);
    const steps = at.slice(1).map(([x, y], i) => [Math.abs(x - at[i]![0]), y - at[i]![1]].map(Math.round));
    for (const step of steps) expect([[16, 0], [0, 21]]).toContainEqual(step);
  });

  it('never gives the sum in words', () => {
    const { seen } = draw({ plugs: all, out: [3, 4, 7] });
    expect(seen).not.toContain('6.5');
    expect(seen).toContain('0.5, 1, 5');
  });

  it('refuses a plug that the box has not got', () => {
    expect(() => draw({ plugs: ['1', '2'], out: [2] })).toThrow(RangeError);
  });
});
