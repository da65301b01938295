import { describe, expect, test } from 'vitest';
import { type Readings, evaluate } from '../../generators/quantities/evaluate.ts';
import { type Program, program } from '../../generators/quantities/program.ts';
import type { Step } from '../../generators/quantities/step.ts';
import { sensitivities, standardUncertainty, worstCase } from '../../generators/quantities/uncertainty.ts';
import { streams } from '../../generators/random.ts';
import { expectWithin, numericalPartial } from './numerical.ts';
import { programOf, randomReadings, variantName, variants } from './practical.ts';

/** The readings with one cell changed. */
function withCell(readings: Readings, id: string, row: number, value: number): Readings {
  const column = [readings[id]!].flat().map((written, at) => (at === row ? String(value) : written));
  return { ...readings, [id]: column };
}

/** The unrounded value of a quantity as a function of one cell of the readings. */
function byCell(checked: Program, readings: Readings, id: string, row: number, cell: { id: string; row: number }): number {
  const start = Number([readings[cell.id]!].flat()[cell.row]);
  const value = ([at]: number[]) => evaluate(checked, withCell(readings, cell.id, cell.row, at!), 'even').exact.get(id)![row]!;
  return numericalPartial(value, [start], 0);
}

describe('the gradient of every step, down to each reading, is the numerical one of the unrounded chain', () => {
  test.each(variants.map((variant) => ({ name: variantName(variant), variant })))('$name', ({ name, variant }) => {
    const checked = programOf(variant);
    const readings = randomReadings(streams('sensitivities').of(name), variant);
    const values = evaluate(checked, readings, 'even');
    const { of } = sensitivities(checked, values);
    const inputs = checked.steps.filter((step) => step.kind === 'reading');
    for (const step of checked.steps) {
      if (step.kind !== 'relation' && step.kind !== 'summary') continue;
      values.exact.get(step.id)!.forEach((value, row) => {
        for (const input of inputs) {
          [readings[input.id]!].flat().forEach((_, cell) => {
            const key = input.per ? `${input.id}[${cell}]` : input.id;
            const expected = byCell(checked, readings, step.id, row, { id: input.id, row: cell });
            const start = Number([readings[input.id]!].flat()[cell]) || 1;
            expect(Math.abs(((of(step.id, row).get(key) ?? 0) - expected) * start), `${step.id}[${row}] by ${key}`).toBeLessThan(1e-8 * Math.abs(value || 1));
          });
        }
      });
    }
  });
});

describe('influences', () => {
  test.each(variants)('known $known, zero error $zero: a model without its influences is its relation', (variant) => {
    const checked = programOf(variant);
    const random = streams('models').of(variantName(variant));
    for (const step of checked.steps) {
      if (step.kind !== 'relation') continue;
      const { as, model, routes } = checked.compiled(step.id);
      const scope = new Map(model.names.map((id) => [id, checked.step(id).kind === 'influence' ? 0 : random.between(1, 3)]));
      const value = (made: typeof as, more = new Map<string, number>()) => made.value(made.names.map((id) => more.get(id) ?? scope.get(id)!));
      expectWithin(value(model), value(as), 1e-14);
      for (const route of routes) {
        const lines = new Map<string, number>();
        for (const line of route.via) lines.set(line.id, value(line.as, lines));
        expectWithin(value(route.as, lines), value(as), 1e-14);
      }
    }
  });

  test('are common to all rows: the mean moves with them as a row does', () => {
    const checked = programOf({ known: 'left', zero: 'none' });
    const readings = { ...randomReadings(streams('influences').of('common'), { known: 'left', zero: 'none' }), R: ['2.0', '2.0', '2.0'], l: ['43.2', '43.2', '43.2'] };
    const { of } = sensitivities(checked, evaluate(checked, readings, 'even'));
    const x = (2 * 56.8) / 43.2;
    expectWithin(of('meanX').get('boxError'), x, 1e-12);
    expectWithin(of('meanX').get('endLeft'), -x / 43.2, 1e-12);
    expectWithin(of('meanX').get('endRight'), 2 / 43.2, 1e-12);
    expectWithin(of('meanX').get('contact'), 1, 1e-12);
  });
});

const cm = { tex: '', unit: 'cm', digits: { decimals: 2 } } as const;
const column = (id: string): Step => ({ kind: 'reading', id, tex: id, unit: 'cm', per: 'table' });
const mean = (id: string, of: string): Step => ({ ...cm, kind: 'summary', id, by: 'mean', of: [of] });

describe('correlations cancel exactly', () => {
  const checked = program([
    { kind: 'reading', id: 'x', tex: 'x', unit: 'cm' },
    { ...cm, kind: 'relation', id: 'double', as: '2 * x' },
    { ...cm, kind: 'relation', id: 'nothing', as: 'x - x' },
    { ...cm, kind: 'relation', id: 'nothing2', as: 'double - x - x' },
    { ...cm, unit: '', kind: 'relation', id: 'one', as: 'double / x' },
    column('a'),
    { ...cm, kind: 'relation', id: 'b', per: 'table', as: 'a + x' },
    { ...cm, kind: 'relation', id: 'difference', per: 'table', as: 'b - a' },
    mean('meanDifference', 'difference'),
    mean('meanA', 'a'),
    { ...cm, kind: 'relation', id: 'zero', as: 'meanA - meanA' },
  ]);
  const values = evaluate(checked, { x: '3.1', a: ['1.2', '2.3', '4.7'] }, 'even');
  const { of, scatters } = sensitivities(checked, values);
  const limits = { x: { absolute: 0.1 }, a: { absolute: 0.1 } };

  test.each(['nothing', 'nothing2', 'zero'])('%s has no error at all', (id) => {
    expect(worstCase(of(id), values, limits)).toBe(0);
    expect(standardUncertainty(of(id), scatters, values, limits).u).toBe(0);
  });
  test('a ratio of a quantity to itself has none', () => {
    expect(worstCase(of('one'), values, limits)).toBeCloseTo(0, 15);
  });
  test('the mean of differences is only as wrong as what differs', () => {
    expect(worstCase(of('meanDifference'), values, limits)).toBeCloseTo(0.1, 14);
    expect(of('meanDifference').get('x')).toBeCloseTo(1, 14);
    for (const row of [0, 1, 2]) expect(of('meanDifference').get(`a[${row}]`)).toBe(0);
  });
});

describe('the worst case', () => {
  const checked = programOf({ known: 'left', zero: 'none' });
  const readings = randomReadings(streams('worst case').of('sheet'), { known: 'left', zero: 'none' });
  const values = evaluate(checked, readings, 'even');
  const { of } = sensitivities(checked, values);

  test('adds the absolute parts of all readings', () => {
    const [l, X] = ['l', 'X'].map((id) => values.exact.get(id)![0]!) as [number, number];
    const worst = worstCase(of('X'), values, { R: { fraction: 0.005 }, l: { absolute: 0.1 } });
    expectWithin(worst, X * (0.005 + 0.1 / l + 0.1 / (100 - l)), 1e-12);
  });
  test('a reading without a limit is exact', () => {
    expect(worstCase(of('X'), values, {})).toBe(0);
  });
});

describe('the standard uncertainty', () => {
  const checked = program([
    { kind: 'influence', id: 'shift', tex: 's', unit: 'cm' },
    column('a'),
    mean('meanA', 'a'),
    { ...cm, kind: 'relation', id: 'result', as: 'meanA', model: 'meanA + shift' },
  ]);
  const budgetOf = (a: string[], halfWidths = {}) => {
    const values = evaluate(checked, { a }, 'even');
    const { of, scatters } = sensitivities(checked, values);
    return standardUncertainty(of('result'), scatters, values, halfWidths);
  };

  test('of scatter alone is s over the root of n, with n - 1 degrees of freedom', () => {
    const { u, freedom, t, expanded } = budgetOf(['1.0', '2.0', '3.0', '4.0']);
    expectWithin(u, Math.sqrt(5 / 3) / 2, 1e-12);
    expect(freedom).toBeCloseTo(3, 12);
    expect([t, expanded]).toEqual([3.18, 3.18 * u]);
  });
  test('of a limit alone is its half-width over the root of 3, known for certain', () => {
    const { u, freedom, t } = budgetOf(['2.0', '2.0', '2.0'], { shift: { absolute: 0.3 } });
    expectWithin(u, 0.3 / Math.sqrt(3), 1e-12);
    expect(freedom).toBe(Infinity);
    expect(t).toBeCloseTo(1.96, 4);
  });
  test('leaves what varies from row to row to the scatter', () => {
    expect(budgetOf(['1.0', '2.0', '4.0'], { a: { absolute: 5 } }).u).toBe(budgetOf(['1.0', '2.0', '4.0']).u);
  });
  test('its parts add in quadrature to the whole', () => {
    const { u, contributions } = budgetOf(['1.0', '2.0', '4.0'], { shift: { absolute: 0.3 } });
    expect(contributions).toHaveLength(2);
    expectWithin(Math.hypot(...contributions.map(({ part }) => part)), u, 1e-14);
  });
});
