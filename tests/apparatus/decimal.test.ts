import { expect, test } from 'vitest';
import { nearestMark, quotient, scaled, wholeIn, written } from '../../generators/apparatus/decimal.ts';

test('a written number keeps the digits of its last place, also at zero and below', () => {
  expect([written(432, 1), written(430, 1), written(0, 2), written(-3, 2), written(-0, 1), written(7, 0)]).toEqual([
    '43.2', '43.0', '0.00', '-0.03', '0.0', '7',
  ]);
});

test('what is written reads back as the same whole number', () => {
  for (let whole = -2000; whole <= 2000; whole += 7)
    for (const decimals of [0, 1, 2, 4]) expect(scaled(written(whole, decimals))).toEqual({ whole, decimals });
});

test('a finer place adds zeros and a coarser one is refused', () => {
  expect(wholeIn('0.5', 2)).toBe(50);
  expect(() => wholeIn('0.25', 1)).toThrow(RangeError);
});

test('only plain decimals are read', () => {
  for (const text of ['', '1e3', '.5', '5.', '1,5', '--1', 'NaN']) expect(() => scaled(text), text).toThrow(RangeError);
});

test('a fraction of the last place cannot be written', () => {
  expect(() => written(43.2, 1)).toThrow(RangeError);
  expect(() => written(NaN, 1)).toThrow(RangeError);
});

test('a quotient is exact, or there is none', () => {
  expect([quotient('0.5', 50), quotient('1', 100), quotient('0.5', 100), quotient('1', 50)]).toEqual(['0.01', '0.01', '0.005', '0.02']);
  expect([quotient('0.5', 30), quotient('1', 7)]).toEqual([undefined, undefined]);
});

test('a scale is read to its nearest mark, whatever its division', () => {
  expect(nearestMark(43.249, '0.1')).toBe('43.2');
  expect(nearestMark(43.251, '0.1')).toBe('43.3');
  expect(nearestMark(43.28, '0.5')).toBe('43.5');
  expect(nearestMark(43.28, '0.05')).toBe('43.30');
  expect(nearestMark(43.6, '1')).toBe('44');
});
