import { describe, expect, test } from 'vitest';
import { whichMaterial } from '../../generators/experiments/which-material.ts';
import type { Verdict } from '../../generators/quantities/step.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { allFit, badNulls, benchSets, coverage, dimensionFaults, rejected, usualAsks } from './bench-sets.ts';

const asks = usualAsks(whichMaterial);

describe('the steps', () => {
  test('have dimensions that fit', () => {
    expect(dimensionFaults(whichMaterial, whichMaterial.ideal(asks[0]!))).toEqual([]);
  });

  // Copper and silver, iron and platinum, manganin and constantan (OpenStax, University Physics, 20 °C), worked by hand.
  test.each([
    [4.85e-7, 0.29e-7, ['manganin', 'constantan'], 'several'],
    [4.85e-7, 0.04e-7, ['manganin'], 'one'],
    [1.02e-7, 0.08e-7, ['iron', 'platinum'], 'several'],
    [2.2e-7, 0.1e-7, [], 'none'],
  ])('ρ = %d ± %d Ω m fits %j: %s', (rho, error, materials, named) => {
    const table = { silver: 1.59e-8, copper: 1.68e-8, iron: 9.71e-8, platinum: 10.6e-8, manganin: 48.2e-8, constantan: 49e-8 };
    const verdict = (id: string) => whichMaterial.steps({ known: 'left', zero: 'none' }).find((step): step is Verdict => step.kind === 'verdict' && step.id === id)!;
    const on = (row: number) => ({ rows: () => Object.values(table), value: (id: string) => (id === 'rho' ? rho : Object.values(table)[row]!), worst: () => error, expanded: () => 0 });
    expect(Object.keys(table).filter((_, row) => verdict('fits').decide(on(row)) === 'fits')).toEqual(materials);
    expect(verdict('named').decide(on(0))).toBe(named);
  });
});

describe('the planner', () => {
  test('passes the usual wires', () => {
    expect(allFit(whichMaterial, asks)).toBe(true);
  });

  test.each(['copper, SWG 38, 400 cm', 'iron, SWG 34, 150 cm'])('refuses %s, which the warmth of the room takes away from its table value', (wire) => {
    const [ask] = usualAsks(whichMaterial, { wires: wire });
    expect(whichMaterial.plan(ask!).unfit[0]).toMatch(/may lie \d\.\d % from the table's value/);
  });
});

describe('10 000 sets', () => {
  const sets = benchSets(whichMaterial, asks, 10_000);

  test('keep every null point inside the window, in millimetres', () => {
    expect(sets.length).toBeGreaterThan(9_900);
    expect(badNulls(sets)).toEqual([]);
  });

  test('hold the same table on every sheet, so that the wire cannot be told from it', () => {
    const told = new Set(sets.map(({ observed: { form, readings } }) => `${form['candidates']} ${[readings['rhoTable']!].flat().join(' ')}`));
    expect(told.size).toBe(1);
  });

  test('leave no honest student outside the accept ranges, who rounds in any permitted way', () => {
    expect(rejected(whichMaterial, sets.slice(0, 200))).toEqual([]);
  });

  // Not always: batches differ by a per cent, and the table has 44e-8 Ω m for manganin whose reels are made to 43e-8.
  // Measured: 96.5 % of 600.
  test('name the right material among those that fit in at least 95 of 100', () => {
    const some = sets.slice(0, 600);
    const right = some.filter(({ ask, observed: { form, readings } }) => {
      const conventions = { ties: 'even', tables: false, drawn: {}, limits: { l: { absolute: 0.1 }, L: { absolute: 0.1 }, n: { absolute: 1 } }, halfWidths: whichMaterial.halfWidths(ask) } as const;
      const { fits } = workOut({ format: 1, edition: 1, experiment: 'which-material', origin: 'generated', form, readings, conventions }, programOf(whichMaterial, { form })).verdicts();
      return fits![form['candidates']!.split(', ').indexOf(ask.wire.made.material)] === 'fits';
    });
    expect(right.length / some.length).toBeGreaterThan(0.95);
  });

  // 1500 sets know a share of 95 % to 0.6 %; measured on 3000: 95.3 %.
  test('state a 95 % interval that covers the true resistivity as often', () => {
    expect(Math.abs(coverage(whichMaterial, sets.slice(0, 1500), 'rho') - 95.5)).toBeLessThan(2);
  });
});
