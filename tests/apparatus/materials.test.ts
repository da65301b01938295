import { describe, expect, test } from 'vitest';
import { gaugeDiameter, readGauges } from '../../generators/apparatus/gauges.ts';
import { nominalValue, readMaterials, tableValue } from '../../generators/apparatus/materials.ts';
import { UserMistake } from '../../generators/mistake.ts';
import { gauges, materials, rawTable } from './tables.ts';

describe('a table value', () => {
  test('keeps its digits, its source and its temperature', () => {
    expect(tableValue(materials, 'tungsten', 'openstax-university')).toMatchObject({
      material: 'tungsten',
      sourceName: 'OpenStax, University Physics',
      rho: '5.60e-8',
      celsius: 20,
    });
  });

  test('of manganin depends on the source, and the sources stay apart', () => {
    const rho = (source: string) => tableValue(materials, 'manganin', source).rho;
    expect(['openstax-college', 'openstax-university', 'ncert', 'maker'].map(rho)).toEqual(['44e-8', '48.2e-8', '48e-8', '43e-8']);
  });

  test('is found under the other names of a material', () => {
    expect(nominalValue(materials, 'eureka')).toEqual(nominalValue(materials, 'constantan'));
  });

  test.each([
    [() => nominalValue(materials, 'nicrome'), 'no material "nicrome"; did you mean nichrome?'],
    [() => nominalValue(materials, 'Constantan'), 'no material "Constantan"; did you mean constantan?'],
    [() => nominalValue(materials, 'wood'), /^no material "wood"; choose one of silver, copper, /],
    [() => nominalValue(materials, 'constructor'), /^no material "constructor"/],
    [() => tableValue(materials, 'copper', 'iec-60889'), 'no value for copper from "iec-60889"; did you mean iec-60028?'],
    [() => gaugeDiameter(gauges, 'swg', '28'), 'no wire gauge series "swg"; did you mean SWG?'],
    [() => gaugeDiameter(gauges, 'SWG', '43'), 'no SWG gauge "43"; did you mean 40?'],
    [() => gaugeDiameter(gauges, 'metric', '0.41'), 'no metric gauge "0.41"; did you mean 0.400?'],
  ])('that is not there is refused with what may have been meant', (look, message) => {
    expect(look).toThrow(UserMistake);
    expect(look).toThrow(message);
  });
});

describe('the tables', () => {
  const broken = (edit: (table: any) => void) => {
    const table = rawTable('materials.yaml');
    edit(table);
    return () => readMaterials(table);
  };

  test.each<[string, (table: any) => void, string]>([
    ['a source that is not listed', (t) => (t.materials.iron.values[0].source = 'hearsay'), 'values.0.source: "hearsay" is not among'],
    ['a nominal source without a value', (t) => (t.materials.iron.nominal = 'maker'), 'materials.iron: nominal names none'],
    ['a source twice', (t) => (t.materials.iron.values[1].source = 'openstax-college'), 'materials.iron: a source stands here twice'],
    ['a resistivity that is no number', (t) => (t.materials.iron.values[0].rho = 9.71e-8), 'materials.iron.values.0.rho'],
    ['a resistivity below zero', (t) => (t.materials.iron.values[0].rho = '-9.71e-8'), 'materials.iron.values.0.rho: must be above zero'],
  ])('refuse %s', (_, edit, message) => expect(broken(edit)).toThrow(message));

  test('refuse a gauge without a diameter', () => {
    expect(() => readGauges({ SWG: { source: 'BS 3737', diameters: { '28': '0' } } })).toThrow('SWG.diameters.28: must be above zero');
  });

  test('have thinner wires under higher numbers, and metric sizes under their own', () => {
    for (const series of ['SWG', 'AWG']) {
      const sizes = Object.entries(gauges[series]!.diameters).sort(([a], [b]) => Number(a) - Number(b));
      const diameters = sizes.map(([, mm]) => Number(mm));
      expect(diameters).toEqual([...diameters].sort((a, b) => b - a));
    }
    for (const [number, mm] of Object.entries(gauges.metric!.diameters)) expect(mm).toBe(number);
  });
});
