import { createHmac } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keyedHash, type Random, streams } from '../generators/random.ts';

const drawn = (random: Random, count = 20) => Array.from({ length: count }, () => random.uniform());
const many = drawn(streams('many').of('uniform'), 40_000);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('a keyed hash', () => {
  test('is HMAC-SHA256 of the parts as JSON, as Node makes it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.array(fc.oneof(fc.string({ unit: 'grapheme' }), fc.integer())), (key, parts) => {
        expect(keyedHash(key, parts)).toBe(createHmac('sha256', key).update(JSON.stringify(parts)).digest('hex'));
      }),
    );
  });

  test('differs between parts that join to the same text', () => {
    expect(keyedHash('key', ['a', 'b'])).not.toBe(keyedHash('key', ['ab']));
    expect(keyedHash('key', [1])).not.toBe(keyedHash('key', ['1']));
  });
});

describe('streams', () => {
  test('give the same numbers under the same seed and name', () => {
    expect(drawn(streams('seed').of('wire', 3))).toEqual(drawn(streams('seed').of('wire', 3)));
  });

  test('differ between seeds that repeat each other', () => {
    const seeds = ['ab', 'abab', 'ababab', 'a', 'aa', ''];
    expect(new Set(seeds.map((seed) => drawn(streams(seed).of('wire')).join())).size).toBe(seeds.length);
  });

  test('differ by name, and do not depend on what was drawn before', () => {
    const all = streams('seed');
    const alone = drawn(all.of('box'));
    drawn(all.of('wire'), 1000);
    expect(drawn(all.of('box'))).toEqual(alone);
    expect(drawn(all.of('wire'))).not.toEqual(alone);
  });

  test('within a name are the streams of the longer name', () => {
    expect(drawn(streams('seed').within('sheet', '7').of('wire'))).toEqual(drawn(streams('seed').of('sheet', '7', 'wire')));
  });
});

describe('numbers of a stream', () => {
  test('are uniform on [0, 1): mean and spread within four standard errors', () => {
    expect(Math.min(...many)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...many)).toBeLessThan(1);
    const error = Math.sqrt(1 / 12 / many.length);
    expect(Math.abs(mean(many) - 0.5)).toBeLessThan(4 * error);
    // The variance of (u − ½)² is 1/180.
    expect(Math.abs(mean(many.map((u) => (u - 0.5) * (u - 0.5))) - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / many.length));
  });

  test('between two limits stay between them', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 1000 }), (seed, low, width) => {
        const value = streams(seed).of('x').between(low, low + width);
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThan(low + width);
      }),
    );
  });

  test('that are whole take every value from low to high, both included, about equally often', () => {
    const random = streams('whole').of('n');
    const counts = new Map<number, number>();
    for (let i = 0; i < 7000; i++) {
      const n = random.integer(-2, 4);
      counts.set(n, (counts.get(n) ?? 0) + 1);
    }
    expect([...counts.keys()].sort((a, b) => a - b)).toEqual([-2, -1, 0, 1, 2, 3, 4]);
    // Each count is binomial, n = 7000, p = 1/7: five standard deviations are 146.
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(146);
  });

  test('that are normal have mean 0 and deviation 1, and end at ±6', () => {
    const random = streams('normal').of('z');
    const values = Array.from({ length: 20_000 }, () => random.normal());
    expect(Math.abs(mean(values))).toBeLessThan(4 / Math.sqrt(values.length));
    expect(Math.abs(mean(values.map((z) => z * z)) - 1)).toBeLessThan(4 * Math.sqrt(2 / values.length));
    expect(Math.max(...values.map(Math.abs))).toBeLessThan(6);
  });
});

describe('choosing', () => {
  test('picks each entry of a list', () => {
    const random = streams('pick').of('list');
    expect(new Set(Array.from({ length: 200 }, () => random.pick(['a', 'b', 'c'])))).toEqual(new Set(['a', 'b', 'c']));
  });

  test('from nothing is an error', () => {
    expect(() => streams('pick').of('list').pick([])).toThrow(RangeError);
  });

  test('shuffles into a new list with the same entries', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.integer()), (seed, list) => {
        const before = [...list];
        const shuffled = streams(seed).of('list').shuffle(list);
        expect(list).toEqual(before);
        expect([...shuffled].sort()).toEqual([...list].sort());
      }),
    );
  });

  test('shuffles into every order, about equally often', () => {
    const random = streams('shuffle').of('list');
    const counts = new Map<string, number>();
    for (let i = 0; i < 6000; i++) {
      const order = random.shuffle(['a', 'b', 'c']).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    // Binomial, n = 6000, p = 1/6: five standard deviations are 144.
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(144);
  });
});
