import { describe, expect, it } from 'vitest';
import type { Ask } from '../../generators/experiments/ask.ts';
import { idealNull } from '../../generators/experiments/bridge-plan.ts';
import { measured, nextSetting } from '../../generators/practice/measured.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { pageOf, setOf } from './pages.ts';

const { experiment, kit } = pageOf('resistivity');
const ask: Ask = { ...kit.ask, wire: kit.wires[0]!, others: [] };
const typed = (texts: Record<string, string>) => measured(experiment, ask, kit.conventions, texts);

describe('readings that were really taken', () => {
  it('open the places that hang on them, and no others', () => {
    expect(typed({}).places.map(({ id }) => id)).toEqual(['LC']);
    const one = typed({ 'R:0': '2.0', 'l:0': '43.2', 'R:1': '2.5' });
    expect(one.places.map(({ key }) => key)).toEqual(['r:0', 'X:0', 'LC:0']);
    const two = typed({ 'R:0': '2.0', 'l:0': '43.2', 'R:1': '2.5', 'l:1': '48.7' });
    expect(two.places.map(({ key }) => key)).toEqual(['r:0', 'r:1', 'X:0', 'X:1', 'meanX:0', 'LC:0']);
  });

  it('all typed, make the sheet of a set with its places', () => {
    const { set, places } = setOf('resistivity', setCode(9));
    const texts = Object.fromEntries(Object.entries(set.sheet.readings).flatMap(([id, values]) => [values].flat().map((value, row) => [`${id}:${row}`, value])));
    const all = typed({ ...texts, 'form:zero': set.sheet.form['zero']! });
    expect(all.places.map(({ key }) => key)).toEqual(places.map(({ key }) => key));
    for (const id of ['R', 'l', 'L', 'n0', 'msr', 'n']) expect(all.sheet.readings[id], id).toEqual(set.sheet.readings[id]);
    expect(all.sheet.origin).toBe('measured');
  });

  it('tell of what no instrument shows, and of what is no plain number', () => {
    expect(typed({ 'l:0': '0.43 m', 'R:0': 'two', 'R:1': '', 'X:0': 'two' }).unread).toEqual(['l:0', 'R:0']);
    expect(typed({ 'l:0': '143.2', 'n0:0': '50' }).faults).toEqual({ 'l:0': expect.stringContaining('not on the bridge wire') as string, 'n0:0': expect.stringContaining('no division') as string });
  });

  it.each(['4.3e1', '43.2 mm', 'abc', ''])('are not taken from %j', (text) => {
    expect(typed({ 'R:0': '2.0', 'l:0': text }).rows['bridge']).toBe(0);
  });
});

describe('R to take next', () => {
  it('has its null point inside the window, away from those there are', () => {
    const next = nextSetting(ask, 2.6, ['2.6'], [50])!;
    expect(next.R).not.toBe('2.6');
    expect(next.l).toBe(idealNull(ask.known, Number(next.R), 2.6));
    expect(next.l).toBeGreaterThanOrEqual(ask.window[0]);
    expect(next.l).toBeLessThanOrEqual(ask.window[1]);
    expect(Math.abs(next.l - 50)).toBeGreaterThan(3);
  });

  it('is none where the box has no other', () => {
    expect(nextSetting(ask, 1e6, [], [])).toBeUndefined();
  });
});
