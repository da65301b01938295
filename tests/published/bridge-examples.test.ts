import { describe, expect, test } from 'vitest';
import type { KnownGap } from '../../generators/experiments/bridge-steps.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { mean } from '../../generators/quantities/summary.ts';
import { relativeTerms } from '../../generators/quantities/textbook.ts';
import { sensitivities, worstCase } from '../../generators/quantities/uncertainty.ts';
import { round } from '../../generators/quantities/written.ts';
import { plainReadings, programOf } from '../quantities/practical.ts';

/** The unrounded values of the practical with some readings of its own. */
function worked(known: KnownGap, zero: 'none' | 'positive', readings: Record<string, string | string[]>) {
  const variant = { known, zero };
  const checked = programOf(variant);
  const values = evaluate(checked, { ...plainReadings(variant), ...readings }, 'up');
  return { checked, values, value: (id: string) => values.exact.get(id)![0]! };
}

describe('the unknown resistance', () => {
  test.each<[string, KnownGap, string, string, number, string]>([
    ['NCERT Physics XII, part I, chapter 3, exercises', 'right', '12.5', '39.5', 1, '8.2'],
    ['a board examination, year not known, from memory', 'right', '50', '40', 2, '33.33'],
    ['all-India pre-medical test 1999, from memory', 'right', '1', '20', 2, '0.25'],
  ])('%s: box in the %s gap, %s Ω, null at %s cm', (_, known, R, l, decimals, X) => {
    expect(round(worked(known, 'none', { R: [R], l: [l] }).value('X'), { decimals }, 'up')).toBe(X);
  });

  test('NCERT, the same exercise: with the gaps interchanged the null is at 60.5 cm', () => {
    const { value } = worked('left', 'none', { R: ['12.5'], l: ['60.5'] });
    expect(round(value('X'), { decimals: 1 }, 'up')).toBe('8.2');
  });
});

describe('the screw gauge', () => {
  // A worked example in several school books: main scale 0.5 mm, division 27, least count 0.01 mm, zero error +0.05 mm.
  test('0.5 mm and 27 divisions with a zero error of +0.05 mm are 0.72 mm', () => {
    const { value } = worked('left', 'positive', { n0: '5', msr: ['0.5'], n: ['27'] });
    expect(round(value('d'), { decimals: 2 }, 'up')).toBe('0.72');
  });
  // JEE Main 2020; the spread printed with it, 0.07 mm, is the population's standard deviation, which the engine does not use.
  test('5.50, 5.55, 5.45 and 5.65 mm have the mean 5.54 mm', () => {
    expect(round(mean([5.5, 5.55, 5.45, 5.65]), { decimals: 2 }, 'up')).toBe('5.54');
  });
});

describe('the error of a bridge reading', () => {
  // A student's laboratory report on a slide-wire bridge: 50 Ω known, 0.25 cm uncertainty of the null.
  test.each([
    ['21.70', '180.41', '2.65'],
    ['35.50', '90.85', '0.99'],
    ['48.30', '53.52', '0.54'],
    ['67.90', '23.64', '0.27'],
  ])('null at %s cm: %s ± %s Ω', (l, X, error) => {
    const { checked, values, value } = worked('left', 'none', { R: ['50'], l: [l] });
    const worst = worstCase(sensitivities(checked, values).of('X'), values, { l: { absolute: 0.25 } });
    expect(round(value('X'), { decimals: 2 }, 'up')).toBe(X);
    // Printed to 0.01 Ω, though not always rounded there: 0.993, 0.536 and 0.2711 stand as 0.99, 0.54 and 0.27.
    expect(Math.abs(worst - Number(error))).toBeLessThanOrEqual(0.0051);
  });

  // ΔX/X = Δl/l + Δl/(100 − l), worked by hand for Δl = 1 mm.
  test.each([['50.0', '0.400'], ['40.0', '0.417'], ['20.0', '0.625'], ['10.0', '1.11']])('1 mm at %s cm is %s %% of X', (l, percent) => {
    const { checked, values, value } = worked('left', 'none', { R: ['2.0'], l: [l] });
    const worst = worstCase(sensitivities(checked, values).of('X'), values, { l: { absolute: 0.1 } });
    expect(round((100 * worst) / value('X'), { figures: 3 }, 'even')).toBe(percent);
  });
});

describe('the resistivity', () => {
  // OpenStax, College Physics 2e, section 20.3: 20.0 m of 12-gauge copper, 2.053 mm thick, 1.72e-8 Ω m, has 0.104 Ω.
  test('20.0 m of copper wire, 2.053 mm thick and of 0.104 Ω: 1.72e-8 Ω m', () => {
    const checked = programOf({ known: 'left', zero: 'none' });
    const own = { meanX: ['0.104'], d: ['2.053'] };
    const values = evaluate(checked, { ...plainReadings({ known: 'left', zero: 'none' }), L: '2000' }, 'even', own);
    expect(values.written.get('rho')).toEqual(['1.72e-8']);
  });

  // JEE Main 2021: 5 ± 0.1 V, 2 ± 0.01 A, 10 ± 0.1 cm, 5 ± 0.01 mm; the largest possible error is 3.9 %.
  describe('from voltage and current, JEE Main 2021', () => {
    const one = { tex: '', unit: '' } as const;
    const checked = program([
      ...['V', 'I', 'L', 'd'].map((id) => ({ ...one, kind: 'reading', id }) as const),
      { ...one, kind: 'relation', id: 'rho', as: 'pi * d^2 * V / (4 * L * I)', digits: { figures: 3 } },
    ]);
    const values = evaluate(checked, { V: '5', I: '2', L: '10', d: '5' }, 'even');
    const errors: Record<string, number> = { V: 0.1, I: 0.01, L: 0.1, d: 0.01 };

    test('the worst case is 3.9 %', () => {
      const worst = worstCase(sensitivities(checked, values).of('rho'), values, Object.fromEntries(Object.entries(errors).map(([id, absolute]) => [id, { absolute }])));
      expect(round((100 * worst) / values.exact.get('rho')![0]!, { decimals: 1 }, 'even')).toBe('3.9');
    });
    test('so is the sum of the textbook terms', () => {
      const terms = relativeTerms(checked.compiled('rho').as.expression, new Set())!;
      const sum = terms.reduce((all, { times, off: [id] }) => all + (times * errors[id!]!) / values.exact.get(id!)![0]!, 0);
      expect(round(100 * sum, { decimals: 1 }, 'even')).toBe('3.9');
    });
  });
});
