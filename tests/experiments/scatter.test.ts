import { describe, expect, test } from 'vitest';
import { mean, standardDeviation } from '../../generators/quantities/summary.ts';
import { demoAsks, hands, sets } from './demo.ts';
import { measure } from './measure.ts';
import { predict } from './monte-carlo.ts';

const GENERATED = 4000;
const PREDICTED = 20_000;

/** The s.d. of n normal deviates is known to 1/√(2n) of itself; four such errors, of both samples together. */
const tolerance = (generated: number, predicted: number) => 4 * Math.sqrt(1 / (2 * generated) + 1 / (2 * predicted));

/** Relative standard deviation of the rows within a set, over all sets; each set of four has three degrees of freedom. */
const withinSets = (tables: readonly number[][]) => Math.sqrt(mean(tables.map((rows) => (standardDeviation(rows) / mean(rows)) * (standardDeviation(rows) / mean(rows)))));

/** How far the rows of a table lie apart: greatest less least, as a part of their mean. */
const apart = (rows: readonly number[]) => (Math.max(...rows) - Math.min(...rows)) / mean(rows);

describe.each(hands)('in %s hands', (which) => {
  const generated = [...sets(demoAsks({ hands: which }), GENERATED, 'scatter')].map(({ ask, observed }) => measure(ask, observed));
  const predicted = predict(which, PREDICTED);

  test('X scatters from row to row as an independent calculation says', () => {
    const ratio = withinSets(generated.map(({ rows }) => rows)) / withinSets(predicted.map(({ rows }) => rows));
    expect(Math.abs(ratio - 1)).toBeLessThan(tolerance(3 * GENERATED, 3 * PREDICTED));
  });

  test.each(['X', 'rho'] as const)('the error of %s is spread over the sets as an independent calculation says, about the same mean', (id) => {
    const ours = generated.map((set) => (id === 'X' ? set.meanX : set.rho).off);
    const theirs = predicted.map((set) => set[id]);
    expect(Math.abs(standardDeviation(ours) / standardDeviation(theirs) - 1)).toBeLessThan(tolerance(GENERATED, PREDICTED));
    const ofMeans = standardDeviation(theirs) * Math.sqrt(1 / GENERATED + 1 / PREDICTED);
    expect(Math.abs(mean(ours) - mean(theirs))).toBeLessThan(4 * ofMeans);
  });

  test('the mean X of a set is right but for what limits allow: no bias beyond a fiftieth of a per cent', () => {
    const off = generated.map(({ meanX }) => meanX.off);
    expect(Math.abs(mean(off))).toBeLessThan(0.0002 + (4 * standardDeviation(off)) / Math.sqrt(GENERATED));
  });

  // School tables scatter by 1 to 2 per cent: from memory.
  test('the X of one table lie as far apart as on a school bench: 1 to 2 % in usual hands, less in careful, more in hurried', () => {
    const spread = mean(generated.map(({ rows }) => apart(rows)));
    const [low, high] = { careful: [0.005, 0.01], usual: [0.01, 0.02], hurried: [0.02, 0.04] }[which] as [number, number];
    expect(spread).toBeGreaterThan(low);
    expect(spread).toBeLessThan(high);
  });
});
