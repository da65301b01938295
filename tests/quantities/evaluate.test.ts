import { describe, expect, test } from 'vitest';
import { type Readings, evaluate, writtenInto } from '../../generators/quantities/evaluate.ts';
import { plainReadings, programOf } from './practical.ts';

const variant = { known: 'left', zero: 'negative' } as const;
const checked = programOf(variant);
const readings = plainReadings(variant);
const shown = (own = {}, from: Readings = readings) => {
  const { written } = evaluate(checked, from, 'even', own);
  return (id: string) => written.get(id)!;
};

describe('the chain as it is written', () => {
  test('each line is worked from the numbers written above it', () => {
    const on = shown({}, { ...readings, R: ['1.0', '2.0', '3.0'], l: ['27.5', '43.2', '53.4'] });
    expect(on('r')).toEqual(['72.5', '56.8', '46.6']);
    expect(on('X')).toEqual(['2.64', '2.63', '2.62']);
    expect(on('meanX')).toEqual(['2.63']);
  });
  test('a negative zero error is counted back from the last division', () => {
    expect(shown()('e')).toEqual(['-0.03']);
    expect(shown()('d')).toEqual(['0.380']);
  });
  test('resistivity is worked in SI units', () => {
    // pi · (0.380e-3)² · 2.63 / (4 · 0.600) = 4.971e-7
    expect(shown()('rho')).toEqual(['4.97e-7']);
    expect(shown()('off')).toEqual(['1.4']);
  });
  test('ties go as they are told', () => {
    const tie = { ...readings, n: ['35', '35', '35', '36'], msr: ['0.0', '0.0', '0.0', '0.0'] };
    const meanD = (ties: 'even' | 'up') => evaluate(checked, tie, ties).written.get('meanD');
    expect(meanD('even')).toEqual(['0.352']);
    expect(meanD('up')).toEqual(['0.353']);
  });
});

describe('the unrounded chain', () => {
  test('rounds nowhere', () => {
    const { exact } = evaluate(checked, readings, 'even');
    const X = (2 * 56.8) / 43.2;
    expect(exact.get('meanX')![0]).toBeCloseTo(X, 14);
    expect(exact.get('rho')![0]! / ((Math.PI * 0.38e-3 ** 2 * X) / 2.4)).toBeCloseTo(1, 13);
  });
  test('influences are zero', () => {
    expect(evaluate(checked, readings, 'even').exact.get('endLeft')).toEqual([0]);
  });
});

describe('error carried forward', () => {
  test('a value put in a row goes on into all that follows, and nothing else', () => {
    const on = shown({ X: [undefined, '1.52', undefined] });
    expect(on('X')).toEqual(['2.63', '1.52', '2.63']);
    expect(on('meanX')).toEqual(['2.26']);
    expect(on('rho')).toEqual(['4.27e-7']);
    expect(on('d')).toEqual(shown()('d'));
    expect(on('r')).toEqual(shown()('r'));
  });
  test('the unrounded chain goes on from it too', () => {
    const { exact } = evaluate(checked, readings, 'even', { meanX: ['3.00'] });
    expect(exact.get('rho')![0]! / ((Math.PI * 0.38e-3 ** 2 * 3) / 2.4)).toBeCloseTo(1, 13);
  });
  test('a reading of the student takes the place of the printed one', () => {
    expect(shown({ l: ['50.0', undefined, undefined] })('X')).toEqual(['2.00', '2.63', '2.63']);
    expect(shown({ L: ['30.0'] })('rho')).toEqual(['9.94e-7']);
  });
  test('an own value keeps the digits that it was written with', () => {
    expect(shown({ d: ['0.38'] })('d')).toEqual(['0.38']);
  });
});

describe('what does not fit', () => {
  test('a missing reading is named', () => {
    const { L: _, ...rest } = readings;
    expect(() => evaluate(checked, rest, 'even')).toThrow('no reading L');
  });
});

test('a number goes into a formula in SI units with its digits as written', () => {
  const rho = checked.steps.find((step) => step.id === 'rho');
  const X = checked.steps.find((step) => step.id === 'X');
  if (rho?.kind !== 'relation' || X?.kind !== 'relation') throw new Error('rho and X are relations');
  expect(writtenInto(checked, rho, 'd', '0.380')).toBe('0.380e-3');
  expect(writtenInto(checked, rho, 'L', '60.0')).toBe('0.600');
  expect(writtenInto(checked, X, 'l', '43.2')).toBe('43.2');
});
