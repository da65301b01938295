import { expect, test } from 'vitest';
import { boxResistance, boxValues, makeBox, plugsOut, reseat } from '../../generators/apparatus/box.ts';
import { mean } from '../../generators/quantities/summary.ts';
import { streams } from '../../generators/random.ts';
import { bench } from './tables.ts';

const plugs = bench.box.plugs;

test('the usual box gives every tenth of an ohm up to the sum of its plugs', () => {
  const values = boxValues(plugs);
  expect(values.slice(0, 3)).toEqual(['0.1', '0.2', '0.3']);
  expect(values).toHaveLength(410);
  expect(values.at(-1)).toBe('41.0');
});

test('a box of whole ohms gives whole ohms, with the gaps that its plugs leave', () => {
  expect(boxValues(['1', '2', '5'])).toEqual(['1', '2', '3', '5', '6', '7', '8']);
});

test('the plugs that are out add up to the resistance, for everything the box can give', () => {
  for (const set of [plugs, ['0.3', '0.5', '0.7', '4'], ['1', '3', '4', '5']])
    for (const value of boxValues(set)) {
      const out = plugsOut(set, value);
      const tenths = out.reduce((sum, place) => sum + Math.round(10 * Number(set[place])), 0);
      expect(tenths).toBe(Math.round(10 * Number(value)));
      expect(new Set(out).size).toBe(out.length);
    }
});

test('the largest plug that can be used comes out first', () => {
  expect(plugsOut(plugs, '2.7').map((place) => plugs[place])).toEqual(['0.2', '0.5', '2']);
  expect(plugsOut(['1', '3', '4', '5'], '7')).toEqual([1, 2]);
});

test('what the box cannot give is refused with the nearest it can', () => {
  expect(() => plugsOut(plugs, '2.35')).toThrow('take 2.3 or 2.4 Ω');
  expect(() => plugsOut(plugs, '50')).toThrow('take 41.0 Ω');
  expect(() => plugsOut(['1', '2', '5'], '4')).toThrow('take 3 or 5 Ω');
});

test('with no error and clean contacts the box gives what is set', () => {
  const box = { plugs, error: 0, contacts: plugs.map(() => 0) };
  for (const value of boxValues(plugs)) expect(boxResistance(box, value)).toBe(Number(value));
});

test('each plug that is in adds the excess of its contact, and the error is the same part of every value', () => {
  const box = { plugs: ['1', '2', '2'], error: 0.01, contacts: [0.1, 0.2, 0.4] };
  expect(boxResistance(box, '1')).toBeCloseTo(1.01 + 0.2 + 0.4, 12);
  expect(boxResistance(box, '3')).toBeCloseTo(3.03 + 0.4, 12);
  expect(boxResistance(box, '5')).toBeCloseTo(5.05, 12);
});

test('a box keeps to its class, and its contacts to their limits on both sides of what it was trimmed for', () => {
  const [least, most] = bench.box.plugContact;
  const boxes = Array.from({ length: 500 }, (_, i) => makeBox(bench, streams('boxes').of(i)));
  for (const box of boxes) {
    expect(Math.abs(box.error)).toBeLessThanOrEqual(bench.box.tolerance);
    for (const contact of box.contacts) {
      expect(Math.abs(contact)).toBeLessThanOrEqual((most - least) / 2);
    }
  }
  expect(Math.max(...boxes.map((box) => box.error))).toBeGreaterThan(0.9 * bench.box.tolerance);
  const contacts = boxes.flatMap((box) => box.contacts);
  // A rectangular distribution of half-width a has the standard deviation a/√3.
  expect(Math.abs(mean(contacts))).toBeLessThan((4 * (most - least)) / 2 / Math.sqrt(3 * contacts.length));
});

test('pressing the plugs home changes the contacts and nothing else', () => {
  const random = streams('boxes').of('seated');
  const box = makeBox(bench, random);
  const again = reseat(box, bench, random);
  expect(again).toEqual({ ...box, contacts: again.contacts });
  for (const [place, contact] of again.contacts.entries()) expect(contact).not.toBe(box.contacts[place]);
});
