import { describe, expect, it } from 'vitest';
import { benchBridge, onWire } from '../../generators/figures/bench/bridge.ts';
import { benchDial } from '../../generators/figures/bench/dial.ts';
import { endAt, jockeyTape, ruleTape, thermometerTape, windowFrom } from '../../generators/figures/bench/tapes.ts';

const words = { cell: 'cell', key: 'key', protective: 'protective', arms: 'P, Q' };
const count = (svg: string, what: string) => svg.split(what).length - 1;

/** Where the marks of a scale stand and how long they are, from the one path that holds them. */
function marksOf(svg: string): { x: number; length: number }[] {
  const data = /class="ink mark" d="M0 [\d.]+([^"]*)"/.exec(svg)![1]!;
  let x = 0;
  return [...data.matchAll(/v([\d.]+)m([\d.]+)-[\d.]+/g)].map(([, length, step]) => {
    const mark = { x, length: Number(length) };
    x += Number(step);
    return mark;
  });
}

const numbersOf = (svg: string) => [...svg.matchAll(/<text x="([-\d.]+)" y="[\d.]+">(\d+)<\/text>/g)].map(([, x, text]) => [Number(x), Number(text)]);

describe('the scale under the jockey', () => {
  it('has a mark every millimetre, the longest at every centimetre, where its number stands', () => {
    const marks = marksOf(jockeyTape());
    expect(marks.map(({ x }) => x)).toEqual(Array.from({ length: 1001 }, (_, mm) => mm));
    const longest = Math.max(...marks.map(({ length }) => length));
    expect(marks.filter(({ length }) => length === longest).map(({ x }) => x)).toEqual(Array.from({ length: 101 }, (_, cm) => 10 * cm));
    expect(numbersOf(jockeyTape())).toEqual(Array.from({ length: 101 }, (_, cm) => [10 * cm, cm]));
  });

  it('is drawn to the same length on the bridge', () => {
    expect(onWire(1000) - onWire(0)).toBeCloseTo(360, 9);
    expect(benchBridge('bridge', words)).toContain(`<text x="${onWire(400)}" y="178">40</text>`);
  });
});

describe('the rule', () => {
  it('puts the two terminals as far apart as the wire is long, and not at its own end', () => {
    expect(endAt('right', 63.4) - endAt('left', 63.4)).toBe(634);
    expect(endAt('left', 63.4)).toBeGreaterThan(0);
    expect(ruleTape(80, 'right', endAt('right', 63.4))).toContain(`translate(${endAt('right', 63.4)} 0)`);
  });

  it('shows each terminal in a window that begins at a number', () => {
    for (const at of [0, 14, 633, 648, 1214]) {
      expect(windowFrom(at) % 10).toBe(0);
      expect(at - windowFrom(at)).toBeGreaterThanOrEqual(0);
      expect(at - windowFrom(at)).toBeLessThanOrEqual(30);
    }
  });
});

describe('the thermometer', () => {
  it('has a division for every degree from 0 °C to 100 °C', () => {
    expect(marksOf(thermometerTape()).map(({ x }) => x / 2)).toEqual(Array.from({ length: 101 }, (_, degree) => degree));
    expect(numbersOf(thermometerTape())).toEqual(Array.from({ length: 11 }, (_, i) => [20 * i, 10 * i]));
  });
});

describe('the dial', () => {
  it.each([20, 30])('has %d divisions on each side', (divisions) => {
    expect(count(benchDial(divisions), 'class="ink mark"')).toBe(2 * divisions + 1);
    expect(benchDial(divisions)).toContain('rotate(50)');
  });
});

describe('the bridge', () => {
  it('has a key, and a protective resistance where the galvanometer hangs on the jockey', () => {
    for (const wired of ['bridge', 'carey-foster', 'kelvin'] as const) {
      expect(count(benchBridge(wired, words), 'data-switch="isClosed"')).toBe(1);
      expect(count(benchBridge(wired, words), 'data-switch="isProtected"')).toBe(wired === 'kelvin' ? 0 : 1);
      expect(count(benchBridge(wired, words), 'data-gap=')).toBe(2);
    }
  });
});
