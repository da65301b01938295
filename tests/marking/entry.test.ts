import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readEntry } from '../../generators/marking/entry.ts';
import { readUnit } from '../../generators/marking/stated-unit.ts';
import { unit } from '../../generators/quantities/unit.ts';

const written = (text: string, decimal: 'point' | 'comma' = 'point') => {
  const entry = readEntry(text, decimal);
  return entry.is === 'number' ? entry.written : entry.is;
};

describe('a number in any usual form keeps its value and its digits', () => {
  test.each([
    ['1.27', '1.27'],
    ['1.270', '1.270'],
    ['1.27e0', '1.27'],
    ['1.27E-3', '1.27e-3'],
    ['.5', '0.5'],
    ['5.', '5'],
    ['+3.2', '3.2'],
    ['-0.03', '-0.03'],
    ['−0.03', '-0.03'],
    ['– 0.03', '-0.03'],
    ['-0.00', '0.00'],
    ['007.5', '7.5'],
    ['4.9×10⁻⁷', '4.9e-7'],
    ['4.9x10^-7', '4.9e-7'],
    ['4.9 x 10^(-7)', '4.9e-7'],
    ['4.9·10⁻⁷', '4.9e-7'],
    ['4.9*10-7', '4.9e-7'],
    ['4.9 × 10^−7', '4.9e-7'],
    ['49×10⁻⁸', '49e-8'],
    ['0.000 000 497', '0.000000497'],
    ['1 270', '1270'],
    ['１.２７', '1.27'],
    ['(4.97 ± 0.05)×10⁻⁷', '4.97e-7'],
    ['2.63 ± 0.02', '2.63'],
    ['2.63 +- 0.02', '2.63'],
  ])('%s is %s', (text, value) => expect(written(text)).toBe(value));

  test('1,27 is 1.27 where the decimal sign is a comma, and there alone', () => {
    expect(written('1,27', 'comma')).toBe('1.27');
    expect(written('4,9×10⁻⁷', 'comma')).toBe('4.9e-7');
    expect(readEntry('1,27', 'point')).toEqual({ is: 'unreadable', why: 'comma' });
    expect(readEntry('1.270', 'comma')).toEqual({ is: 'unreadable', why: 'point' });
  });
});

test('not entered, left blank and struck out are three things', () => {
  expect(['', '  ', '-', '–', '−', 'x', 'X', '×'].map((text) => readEntry(text, 'point').is)).toEqual([
    'not entered', 'not entered', 'left blank', 'left blank', 'left blank', 'struck out', 'struck out', 'struck out',
  ]);
});

test.each(['two', '2.6.3', '2.63 2.64', '12 34', '22/7', '=2.63', '27.Jan', '4.9×107', '2.63 quux', '1e99', '2.63 Ω?', '--2', '1e', '2.63e-'])('%s is unreadable, not guessed', (text) => {
  expect(readEntry(text, 'point').is).toBe('unreadable');
});

test.each([
  ['date', ['27.Jan', '02-Jan', 'Feb 75', 'Jan-27', '1. März', '2026-11-25', '1/2/2026', '01.02.26']],
  ['sign', ['2.63 ?', '4.9e-7 ? m', '2.63 \ufffd']],
  ['unit', ['2.63 quux', '2.63 Ω?', '2.63?!']],
  ['noNumber', ['two', 'May', '=2.63', 'Zug 27']],
] as const)('what a spreadsheet has done to a number is told from what nobody can read: %s', (why, texts) => {
  for (const text of texts) expect(readEntry(text, 'point'), text).toMatchObject({ is: 'unreadable', why });
});

describe('the unit after a number', () => {
  test.each([
    ['2.63 Ω', 'Ω', 0],
    ['2.63Ω', 'Ω', 0],
    ['2.63 Ω', 'Ω', 0],
    ['2.63 ohms', 'Ω', 0],
    ['2.63 Ohm', 'Ω', 0],
    ['2630 mΩ', 'Ω', -3],
    ['2630 milliohms', 'Ω', -3],
    ['0.376 mm', 'm', -3],
    ['376 µm', 'm', -6],
    ['376 μm', 'm', -6],
    ['0.0376 centimetres', 'm', -2],
    ['4.97×10⁻⁷ Ω m', 'm Ω', 0],
    ['4.97×10⁻⁷ Ωm', 'm Ω', 0],
    ['4.97×10⁻⁷ Ω·m', 'm Ω', 0],
    ['4.97e-7 ohm-metre', 'm Ω', 0],
    ['4.97e-5 ohm cm', 'm Ω', -2],
    ['4.97e-7 m Ω', 'm Ω', 0],
    ['4.97e-7 Ω/m', 'm^-1 Ω', 0],
    ['0.0184 cm⁻¹', 'm^-1', 2],
    ['1.4 %', '', -2],
    ['1.4 per cent', '', -2],
    ['21 °C', '°C', 0],
  ])('%s', (text, of, tens) => expect(readEntry(text, 'point')).toMatchObject({ is: 'number', unit: { of, tens } }));

  test('may be left out, and ! says that the student left it out', () => {
    expect(readEntry('2.63', 'point')).toEqual({ is: 'number', written: '2.63' });
    expect(readEntry('2.63 !', 'point')).toEqual({ is: 'number', written: '2.63', unitless: true });
  });

  test('of every quantity that the steps can have is read as what it is', () => {
    const source = readFileSync('generators/quantities/unit.ts', 'utf8');
    const names = [...source.matchAll(/^ {2}'?([^'\s][^':]*)'?: \{ tex:/gmu)].map(([, name]) => name!);
    expect(names.length).toBeGreaterThan(7);
    for (const name of names) expect(readUnit(name)?.tens, name).toBe(unit(name).tens);
  });
});
