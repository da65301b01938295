import { describe, expect, test } from 'vitest';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';

const cm = { tex: '', unit: 'cm' } as const;
const checked = program([
  { ...cm, kind: 'influence', id: 'step' },
  { ...cm, kind: 'reading', id: 'x', per: 'table' },
  { ...cm, kind: 'summary', id: 'meanX', by: 'mean', of: ['x'], digits: { decimals: 2 }, resolution: 'step' },
  { ...cm, kind: 'relation', id: 'result', as: 'meanX', model: 'meanX + step', digits: { decimals: 2 } },
]);

/** Sources of the uncertainty of a mean of readings to 0.1 cm. */
function budget(x: string[]) {
  const values = evaluate(checked, { x }, 'even');
  const { of, scatters } = sensitivities(checked, values);
  return standardUncertainty(of('result'), scatters, values, { step: { absolute: 0.05 } });
}

describe('the resolution of readings whose mean is taken', () => {
  test('is all there is when they are alike', () => {
    const { u, contributions } = budget(['1.2', '1.2', '1.2', '1.2']);
    expect(contributions.map(({ source }) => source)).toContain('step');
    expect(u).toBeCloseTo(0.05 / Math.sqrt(3), 14);
  });

  test('is held by their scatter as soon as that is larger', () => {
    const { u, contributions } = budget(['1.2', '1.2', '1.2', '1.3']);
    expect(contributions.map(({ source }) => source)).toEqual(['scatter of mean x']);
    // Standard deviation of 0, 0, 0, 1 tenths: 1/2, over the root of 4.
    expect(u).toBeCloseTo(0.1 / 4, 14);
  });

  test('counts beside a scatter that is smaller, as one reading in many that differs', () => {
    const { contributions } = budget([...Array.from({ length: 15 }, () => '1.2'), '1.3']);
    expect(contributions.map(({ source }) => source).sort()).toEqual(['scatter of mean x', 'step']);
  });
});
