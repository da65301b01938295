import { describe, expect, it } from 'vitest';
import { bridgeCircuit } from '../../generators/figures/circuit.ts';
import { dial } from '../../generators/figures/dial.ts';
import { gallery } from '../../generators/figures/gallery.ts';
import { metreScale } from '../../generators/figures/metre-scale.ts';
import { rule } from '../../generators/figures/rule.ts';
import { screwGauge } from '../../generators/figures/screw-gauge.ts';
import { streams } from '../../generators/random.ts';
import { extent, overlaps } from './boxes.ts';
import { elements, labels, words } from './read-svg.ts';

const exhibits = gallery(words);
const random = streams('page').of('instruments');
const instruments = Array.from({ length: 60 }, (_, i) => [
  metreScale({ id: `s${i}`, pointerCm: random.integer(0, 1000) / 10 }, words),
  rule({ id: `r${i}`, leftCm: random.between(0, 30), rightCm: random.between(40, 100) }, words),
  screwGauge({ id: `g${i}`, pitch: 0.5, divisions: 50, turns: random.integer(-1, 30), division: random.integer(0, 49) }, words),
  screwGauge({ id: `h${i}`, pitch: 1, divisions: 100, turns: random.integer(-1, 15), division: random.integer(0, 99) }, words),
  dial({ id: `d${i}`, deflection: random.between(-40, 40) }, words),
]).flat();
const all = [...exhibits.map(({ svg }) => svg), ...instruments.map(({ svg }) => svg)];

describe('every figure', () => {
  it('has a caption, and every caption a figure', () => {
    expect(exhibits.map(({ id }) => id).sort()).toEqual(Object.keys(words.gallery).sort());
  });

  it('is drawn alike each time, and has no id but its own', () => {
    expect(gallery(words)).toEqual(exhibits);
    const ids = all.map((svg) => [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id));
    expect(ids.every((own) => own.length === 1)).toBe(true);
    expect(new Set(ids.flat()).size).toBe(all.length);
  });

  it('is well formed and holds no stray value', () => {
    for (const svg of all) {
      expect(svg).not.toMatch(/NaN|undefined|Infinity|\{/);
      expect(svg.replace(/ aria-label="[^"]*"/, '')).not.toMatch(/\d\.\d{4}/);
      const opened = [...svg.matchAll(/<\w+/g)].length;
      const closed = [...svg.matchAll(/<\/\w+>|\/>/g)].length;
      expect(opened).toBe(closed);
    }
  });

  it('is an image with words for those who do not see it', () => {
    for (const svg of all) {
      const { attributes } = elements(svg)[0]!;
      expect(attributes.role).toBe('img');
      expect(attributes['aria-label']!.length).toBeGreaterThan(30);
    }
  });

  it('fits between the margins of A4 and Letter: 170 mm', () => {
    for (const svg of all) expect(Number(/^<svg[^>]* width="([\d.]+)mm"/.exec(svg)![1])).toBeLessThanOrEqual(170);
  });

  it('prints: no line under 0.1 mm, no letter under 3 mm, nothing but black, white and grey', () => {
    for (const { attributes } of all.flatMap(elements)) {
      if (attributes['stroke-width']) expect(Number(attributes['stroke-width'])).toBeGreaterThanOrEqual(0.1);
      if (attributes['font-size']) expect(Number(attributes['font-size'])).toBeGreaterThanOrEqual(3);
      for (const ink of [attributes.fill, attributes.stroke]) expect(ink ?? 'none').toMatch(/^(none|#(.)\2\2|#(..)\3\3)$/);
    }
  });

  it('keeps scales and grids to a few paths', () => {
    for (const svg of all) expect(elements(svg).filter(({ name }) => name === 'path').length).toBeLessThan(40);
  });

  it('keeps its labels apart and inside', () => {
    for (const svg of all) {
      expect(overlaps(labels(svg))).toEqual([]);
      const [, , width, height] = elements(svg)[0]!.attributes.viewBox!.split(' ').map(Number);
      const outside = labels(svg).map(extent).filter(({ left, right, top, bottom }) => left < 0 || top < 0 || right > width! || bottom > height!);
      expect(outside).toEqual([]);
    }
  });

  it('grows for large print without a change to the drawing', () => {
    const plain = bridgeCircuit({ id: 'c', known: 'left', symbol: 'rectangle', named: true }, words);
    const large = bridgeCircuit({ id: 'c', known: 'left', symbol: 'rectangle', named: true, enlarge: 1.4 }, words);
    expect(large).toContain('width="168mm"');
    expect(large.replace(/ width="168mm" height="137.2mm"/, ' width="120mm" height="98mm"')).toBe(plain);
  });
});
