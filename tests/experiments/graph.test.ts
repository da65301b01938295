import { describe, expect, test } from 'vitest';
import { graph } from '../../generators/experiments/graph.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { fitThroughOrigin } from '../../generators/quantities/origin-line.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { allFit, badNulls, benchSets, coverage, dimensionFaults, rejected, usualAsks } from './bench-sets.ts';

const asks = usualAsks(graph);

describe('the steps', () => {
  test('have dimensions that fit', () => {
    expect(dimensionFaults(graph, graph.ideal(asks[0]!))).toEqual([]);
  });

  // With X = 3 Ω and R = 2, 3 and 4.5 Ω the null points are at 40, 50 and 60 cm, worked by hand.
  test.each([
    ['left', ['40', '50', '60']],
    ['right', ['60', '50', '40']],
  ])('give 3 Ω for a wire of 3 Ω with the box in the %s gap', (known, l) => {
    const program = programOf(graph, { form: { known } });
    const { exact } = evaluate(program, { W: '100', R: ['2', '3', '4.5'], l }, 'even');
    expect(exact.get('X')![0]).toBeCloseTo(3, 12);
  });

  // A box that is 1 % too large makes every X 1 % too large; joints that add 10 mΩ more to the box's gap make it seem 10 mΩ smaller.
  test.each([
    ['boxError', 0.01, 3.03],
    ['contact', 0.01, 3.01],
  ])('take %s of %d to an X of %d Ω, the real ratio being what R over X comes to', (influence, size, X) => {
    const program = programOf(graph, { form: { known: 'left' } });
    const { model } = program.compiled('ratio');
    const rows = [[2, 40], [3, 50], [4.5, 60]] as const;
    const ratios = rows.map(([R, l]) => model.value(model.names.map((id) => ({ R, l, r: 100 - l, W: 100, [influence]: size })[id] ?? 0)));
    expect(fitThroughOrigin(ratios, rows.map(([R]) => R)).slope).toBeCloseTo(X, 3);
  });
});

test('the usual wires suit the usual box', () => {
  expect(allFit(graph, asks)).toBe(true);
});

describe('10 000 sets', () => {
  const sets = benchSets(graph, asks, 10_000);

  test('keep every null point inside the window, in millimetres', () => {
    expect(sets.length).toBeGreaterThan(9_900);
    expect(badNulls(sets)).toEqual([]);
  });

  test('spread over the paper: the largest ratio is at least 1.5 times the smallest', () => {
    for (const { observed } of sets) {
      const l = [observed.readings['l']!].flat().map(Number);
      const [least, most] = [Math.min(...l), Math.max(...l)];
      expect((most * (100 - least)) / (100 - most) / least).toBeGreaterThan(1.5);
    }
  });

  test('leave no honest student outside the accept ranges, who rounds in any permitted way', () => {
    expect(rejected(graph, sets.slice(0, 1000))).toEqual([]);
  });

  // 3000 sets know a share of 95 % to 0.4 %; measured 94.9 %.
  test('state a 95 % interval that covers the true resistance as often', () => {
    expect(Math.abs(coverage(graph, sets.slice(0, 3000), 'X') - 95)).toBeLessThan(1.5);
  });
});
