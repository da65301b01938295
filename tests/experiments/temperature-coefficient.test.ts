import { describe, expect, test } from 'vitest';
import { temperatureCoefficient } from '../../generators/experiments/temperature-coefficient.ts';
import { drawings } from '../../generators/experiments/drawings.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { words } from '../figures/read-svg.ts';
import { allFit, badNulls, benchSets, coverage, dimensionFaults, rejected, usualAsks } from './bench-sets.ts';

const asks = usualAsks(temperatureCoefficient);
const program = programOf(temperatureCoefficient, { form: { known: 'right', reference: '20' } });

describe('the steps', () => {
  test('have dimensions that fit', () => {
    expect(dimensionFaults(temperatureCoefficient, temperatureCoefficient.ideal(asks[0]!))).toEqual([]);
  });

  // KCET, an entrance examination: 4 Ω in the right gap, the coil in the left; the null point is at 50 cm at 0 °C and at
  // 60 cm at 100 °C. Published: α = 0.005 /°C, which is referred to 0 °C. Two points fix the line.
  const published = evaluate(program, { W: '100', R: '4', t: ['0', '100'], l: ['50', '60'], tRef: '20', alphaTable: '0.0045' }, 'even').exact;

  test('give the published coefficient, referred to 0 °C', () => {
    expect(published.get('X0')![0]).toBeCloseTo(4, 12);
    expect(published.get('alpha0')![0]).toBeCloseTo(0.005, 12);
  });

  test('refer it to another temperature: 0.02 Ω/°C over 4.4 Ω at 20 °C', () => {
    expect(published.get('alphaRef')![0]).toBeCloseTo(0.02 / 4.4, 12);
  });
});

describe('the planner', () => {
  test('passes the usual coils', () => {
    expect(allFit(temperatureCoefficient, asks)).toBe(true);
  });

  test.each([
    { wires: 'constantan, SWG 28, 60 cm' },
    { wires: 'manganin, SWG 28, 90 cm' },
    { wires: 'nichrome, SWG 26, 75 cm' },
    { wires: 'german silver, SWG 28, 100 cm', resistivity: 'maker' },
  ])('refuses $wires, whose change is too small to see, and says so', (entries) => {
    const [ask] = usualAsks(temperatureCoefficient, entries);
    const { unfit } = temperatureCoefficient.plan(ask!);
    expect(unfit).toHaveLength(1);
    expect(unfit[0]).toMatch(/changes by \d\.\d % .* moves the null point by 0\.\d cm, too little/);
  });
});

describe('10 000 sets', () => {
  const sets = benchSets(temperatureCoefficient, asks, 10_000);

  test('keep every null point inside the window, in millimetres, with one R and temperatures in whole degrees that rise', () => {
    expect(sets.length).toBeGreaterThan(9_500);
    expect(badNulls(sets)).toEqual([]);
    for (const { observed: { readings } } of sets) {
      const t = [readings['t']!].flat();
      expect(typeof readings['R']).toBe('string');
      expect(t.every((celsius) => /^\d\d$/.test(celsius))).toBe(true);
      expect(t.every((celsius, row) => row === 0 || Number(celsius) > Number(t[row - 1]))).toBe(true);
    }
  });

  test('can all be drawn on the thermometer', () => {
    for (const { observed: { readings, form } } of sets.slice(0, 200)) {
      const drawn = drawings(programOf(temperatureCoefficient, { form }).steps, { readings, form, drawn: { t: 0.5 }, decided: [] }, 'd', words);
      expect(drawn.map(({ instrument }) => instrument)).toEqual([readings['t']!].flat().map(() => 'thermometer'));
    }
  });

  test('leave no honest student outside the accept ranges, who rounds in any permitted way', () => {
    expect(rejected(temperatureCoefficient, sets.slice(0, 200))).toEqual([]);
  });

  // 800 sets know a share of 95 % to 0.8 %; measured on 3000: X0 95.3 %, both coefficients 95.2 %.
  test.each(['X0', 'alpha0', 'alphaRef'])('state a 95-per-cent interval that covers the true %s as often', (id) => {
    expect(Math.abs(coverage(temperatureCoefficient, sets.slice(0, 800), id) - 95)).toBeLessThan(2.5);
  });
});
