import { unit as mathUnit } from 'mathjs';
import { expect, test } from 'vitest';
import { unit } from '../../generators/quantities/unit.ts';

test.each(['Ω', 'mΩ', 'kΩ', 'm', 'cm', 'mm', 'mm²', 'm²', 'Ω m', 'Ω²', 'Ω/m', 'Ω/cm', 'V', 'mV', 'V/m', 'V/cm', 'A', 'mA', 'µA', 'W', '/°C', '°'])('%s is the stated power of ten of its coherent unit, as mathjs has it', (name) => {
  const { math, tens, coherent } = unit(name);
  expect(mathUnit(1, math).toNumber(unit(coherent).math)).toBeCloseTo(10 ** tens, 12);
});

test.each(['', '%'])('"%s" is a pure number', (name) => {
  expect(unit(name)).toMatchObject({ math: '', coherent: '' });
});

test('a unit that is not in the list is a mistake', () => {
  expect(() => unit('furlong')).toThrow('no unit "furlong"');
});
