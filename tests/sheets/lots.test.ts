import { describe, expect, test } from 'vitest';
import { drawLots } from '../../generators/sheets/lots.ts';

const people = Array.from({ length: 50 }, (_, i) => `candidate ${i}`);
const combinations = ['a', 'b', 'c', 'd', 'e', 'f'];

describe('lots', () => {
  const batches = drawLots(people, combinations, 24, 'hat');

  test('keep every batch within its size, all of nearly one size, the candidates in their order', () => {
    expect(batches.map(({ lots }) => lots.length)).toEqual([16, 17, 17]);
    expect(batches.flatMap(({ lots }) => lots.map(({ candidate }) => candidate))).toEqual(people);
  });

  test('give each candidate of a batch a station of its own', () => {
    for (const { lots, stations } of batches) {
      expect(lots.map(({ station }) => station.number).sort((a, b) => a - b)).toEqual(stations.map(({ number }) => number));
    }
  });

  test('use all combinations evenly, and never the same side by side', () => {
    for (const { stations } of batches) {
      const used = combinations.map((each) => stations.filter(({ combination }) => combination === each).length);
      expect(Math.max(...used) - Math.min(...used)).toBeLessThanOrEqual(1);
      for (const [i, { combination }] of stations.entries()) expect(combination).not.toBe(stations[i + 1]?.combination);
    }
  });

  test('fall the same with the same secret, and otherwise with another', () => {
    const numbers = (secret: string) => drawLots(people, combinations, 24, secret).flatMap(({ lots }) => lots.map(({ station }) => station.number));
    expect(numbers('hat')).toEqual(numbers('hat'));
    expect(numbers('hat')).not.toEqual(numbers('cap'));
  });

  test('favour no candidate: over 400 draws each gets each of four stations about as often', () => {
    const four = people.slice(0, 4);
    const count = Array.from({ length: 4 }, () => [0, 0, 0, 0]);
    for (let i = 0; i < 400; i++) drawLots(four, combinations, 24, String(i))[0]!.lots.forEach(({ station }, who) => count[who]![station.number - 1]!++);
    // 100 of 400 with a standard deviation of 8.7 (binomial).
    for (const one of count.flat()) expect(Math.abs(one - 100)).toBeLessThan(4 * 8.7);
  });
});
