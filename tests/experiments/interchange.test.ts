import { describe, expect, test } from 'vitest';
import { interchange } from '../../generators/experiments/interchange.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { streams } from '../../generators/random.ts';
import { demoAsks, hands } from './demo.ts';

const worked = program(interchange.steps({}));

describe('the steps', () => {
  test('have dimensions that fit', () => {
    const args = { W: 100, R: 2.5, l: 43.2, r: 56.8, m: 57.1, q: 42.9, X1: 2.6, X2: 2.5, X: 2.55 };
    for (const step of worked.steps) if (step.kind === 'relation') expect(dimensionFault(worked, step, args)).toBeUndefined();
  });

  // A wire of 2.5 Ω with end corrections α and β in cm; null points from (l + α)/(100 − l + β) = left/right, worked by hand.
  test.each([
    [0.3, 0.5, '1.0', 2.5088, 2.5336, 2.5212],
    [0.3, 0.5, '2.5', 2.49, 2.51, 2.5],
    [0.3, 0.5, '5.0', 2.4738, 2.4963, 2.485],
    [1, 1, '1.0', 2.5533, 2.5533, 2.5533],
  ])('with α = %d, β = %d and R = %s the mean is free of their difference and keeps their sum', (alpha, beta, R, direct, swapped, mean) => {
    const X = 2.5;
    const nullAt = (left: number, right: number) => String((left * (100 + beta) - right * alpha) / (left + right));
    const readings = { W: '100', R: [R], l: [nullAt(Number(R), X)], m: [nullAt(X, Number(R))] };
    const { exact } = evaluate(worked, readings, 'even');
    expect(exact.get('X1')![0]).toBeCloseTo(direct, 4);
    expect(exact.get('X2')![0]).toBeCloseTo(swapped, 4);
    expect(exact.get('X')![0]).toBeCloseTo(mean, 4);
  });
});

describe.each(hands)('3000 sets in %s hands', (which) => {
  const asks = demoAsks({ hands: which });
  const sets = Array.from({ length: 3000 }, (_, i) => {
    const ask = asks[i % asks.length]!;
    return { ask, observed: interchange.observe(ask, streams('interchange').within(which, i)) };
  }).flatMap(({ ask, observed }) => (observed ? [{ ask, observed }] : []));

  test('keep both null points inside the window, in millimetres', () => {
    for (const { ask, observed } of sets)
      for (const place of [observed.readings['l']!, observed.readings['m']!].flat()) {
        expect(place).toMatch(/^\d\d\.\d$/);
        expect(Number(place)).toBeGreaterThanOrEqual(ask.window[0]);
        expect(Number(place)).toBeLessThanOrEqual(ask.window[1]);
      }
  });

  // 3000 sets know a share of 95 % to 0.4 %. In careful hands the class of the box outweighs all else that the
  // interchange leaves, and a limit has no tails: t·u is then too long (JCGM 101:2008, 9.2.4, from memory).
  test('state a 95 % interval that covers the true resistance as often, more often where the class of the box outweighs the rest', () => {
    const covered = sets.filter(({ ask, observed }) => {
      const values = evaluate(worked, observed.readings, 'even');
      const { of, scatters } = sensitivities(worked, values);
      const { expanded } = standardUncertainty(of('meanX'), scatters, values, interchange.halfWidths(ask));
      return Math.abs(values.exact.get('meanX')![0]! - observed.truth['X']!) <= expanded;
    });
    const percent = (100 * covered.length) / sets.length;
    const [low, high] = { careful: [97, 99.5], usual: [94, 97], hurried: [93.5, 96.5] }[which] as [number, number];
    expect(percent).toBeGreaterThan(low);
    expect(percent).toBeLessThan(high);
  });
});
