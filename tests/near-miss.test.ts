import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { didYouMean, nearMiss } from '../generators/near-miss.ts';

const MATERIALS = ['constantan', 'manganin', 'nichrome', 'german silver'];

describe('a near miss', () => {
  test.each([
    ['nicrome', 'nichrome', 'a letter left out'],
    ['maganinn', 'manganin', 'two slips'],
    ['amnganin', 'manganin', 'a pair swapped'],
    ['NICHROME', 'nichrome', 'other case'],
  ])('%s is taken for %s (%s)', (typed, meant) => {
    expect(nearMiss(typed, MATERIALS)).toBe(meant);
  });

  test('is not a word with three letters changed', () => {
    expect(nearMiss('nobgqome', MATERIALS)).toBeUndefined();
  });

  test('may differ in three letters at its end, where the beginning is the same', () => {
    expect(nearMiss('iec-60889', ['ncert', 'iec-60028'])).toBe('iec-60028');
  });

  test('has one slip where either word is short', () => {
    expect(nearMiss('swq', ['SWG', 'AWG'])).toBe('SWG');
    expect(nearMiss('xyg', ['SWG', 'AWG'])).toBeUndefined();
    expect(nearMiss('sw', ['SWGx'])).toBeUndefined();
  });

  test('is the nearest of several', () => {
    expect(nearMiss('lower', ['flowers', 'tower', 'power'])).toBe('tower');
    expect(nearMiss('planx', ['flank', 'plan'])).toBe('plan');
  });

  test('among numbers is the nearest in size, however far', () => {
    expect(nearMiss('43', ['8', '28', '40'])).toBe('40');
    expect(nearMiss('0.41', ['0.400', '4.1'])).toBe('0.400');
  });

  test('is always one of the candidates, and never the word itself', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.string()), (word, candidates) => {
        const found = nearMiss(word, candidates);
        if (found === undefined) return;
        expect(candidates).toContain(found);
        expect(found).not.toBe(word);
      }),
    );
  });
});

test('a message asks for the near miss, or says nothing', () => {
  expect(didYouMean('nicrome', MATERIALS)).toBe('; did you mean nichrome?');
  expect(didYouMean('tin', MATERIALS)).toBe('');
});
