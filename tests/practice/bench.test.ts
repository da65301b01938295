import { describe, expect, it } from 'vitest';
import { nullPlace } from '../../generators/apparatus/null.ts';
import { boxResistance, plugsOut } from '../../generators/apparatus/box.ts';
import { faultNames } from '../../generators/apparatus/faults.ts';
import { type Setting, benchOf, benchReadings, boxReads, needle, withOwnReadings } from '../../generators/practice/bench.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from './pages.ts';

const { set, steps } = setOf('resistivity', setCode(7));
const bench = benchOf(set);
const R = [set.sheet.readings['R']!].flat()[0]!;
const l = [set.sheet.readings['l']!].flat()[0]!;
const at = (millimetres: number, manner: Partial<Setting> = {}): Setting => ({ out: new Set(plugsOut(bench.box.plugs, R)), millimetres, isPressed: true, isClosed: true, isProtected: false, ...manner });

describe('the bench of a set', () => {
  it('is the one that the printed readings were taken on', () => {
    const put = boxResistance(bench.box, R);
    const place = nullPlace(bench.bridge, { left: put, right: set.truth['X']! });
    // Hands and eye put a null point off by a few millimetres, plugs that are pressed home again by less.
    expect(Math.abs(place - Number(l))).toBeLessThan(1);
    expect(Math.abs(needle(bench, at(Math.round(10 * place))))).toBeLessThan(1);
  });

  it('has opposite deflections at the two ends, to the right where the jockey is right of the null', () => {
    expect(needle(bench, at(50))).toBe(-bench.bridge.galvanometer.divisions);
    expect(needle(bench, at(950))).toBe(bench.bridge.galvanometer.divisions);
  });

  it.each([{ isPressed: false }, { isClosed: false }])('shows no current with %j', (manner) => {
    expect(needle(bench, at(100, manner))).toBe(0);
  });

  it('moves its needle less while the protective resistance is in', () => {
    const off = 10 * Number(l) + 30;
    expect(Math.abs(needle(bench, at(off, { isProtected: true })))).toBeLessThan(Math.abs(needle(bench, at(off))) / 5);
  });

  it('reads the box as the sum of the plugs that are out, and stands at an end with none', () => {
    expect(boxReads(bench, new Set(plugsOut(bench.box.plugs, R)))).toBe(R);
    expect(boxReads(bench, new Set())).toBe('0.0');
    expect(needle(bench, at(500, { out: new Set() }))).toBeGreaterThan(5);
  });

  it('has each fault on some set, and deflects as the fault makes it', () => {
    const seen = new Set<string>();
    for (let i = 0; i < 200; i++) {
      const faulty = benchOf(setOf('resistivity', setCode(i)).set, true);
      seen.add(faulty.fault!);
      const [left, right] = [needle(faulty, at(20)), needle(faulty, at(980))];
      if (/gap (?:open|shorted)$/.test(faulty.fault!)) expect(left * right, faulty.fault).toBeGreaterThanOrEqual(0);
      if (/branch open$/.test(faulty.fault!)) expect([left, right].map(Math.abs), faulty.fault).toEqual([0, 0]);
      if (/reversed$/.test(faulty.fault!)) expect(left * right, faulty.fault).toBeLessThan(0);
    }
    expect([...seen].sort()).toEqual([...faultNames].sort());
  }, 120_000);

  it('puts the own readings of a row in place of the printed ones', () => {
    const reads = benchReadings(steps, set)!;
    expect(reads).toMatchObject({ box: 'R', scale: 'l' });
    const { sheet } = withOwnReadings(set, { 'R:1': '2.5', 'l:1': '48.7' });
    const rows = (id: string) => [sheet.readings[id]!].flat();
    expect([rows('R')[1], rows('l')[1], rows('R')[0], rows('l')[0]]).toEqual(['2.5', '48.7', R, l]);
  });

  it('is there for no experiment that is done otherwise', () => {
    for (const id of ['gauge-drill', 'interchange', 'series-parallel']) {
      const other = setOf(id, setCode(7));
      expect(benchReadings(other.steps, other.set), id).toBeUndefined();
    }
  });
});
