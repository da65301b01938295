import { describe, expect, test } from 'vitest';
import { balance, readBalance } from '../../generators/apparatus/balance.ts';
import type { Hands } from '../../generators/apparatus/bench.ts';
import { deadBand, nullPlace } from '../../generators/apparatus/null.ts';
import { readRule } from '../../generators/apparatus/rule.ts';
import { mean, standardDeviation } from '../../generators/quantities/summary.ts';
import { streams } from '../../generators/random.ts';
import { ideal } from './ideal.ts';
import { bench } from './tables.ts';

const gaps = { left: 2.5, right: 4 };
const hands: Hands[] = ['careful', 'usual', 'hurried'];
const trials = 4000;

describe('the jockey', () => {
  test.each(hands)('in %s hands rests round the null, spread by the hand and the dead band', (which) => {
    const random = streams('jockey').of(which);
    const places = Array.from({ length: trials }, () => balance(ideal, bench, gaps, which, random));
    const [low, high] = deadBand(ideal, gaps);
    const spread = Math.sqrt(bench.hands[which].jockey * bench.hands[which].jockey + ((high - low) * (high - low)) / 12);
    expect(Math.abs(mean(places) - nullPlace(ideal, gaps))).toBeLessThan((4 * spread) / Math.sqrt(trials));
    // The standard deviation of n normal deviates is known to 1/√(2n).
    expect(Math.abs(standardDeviation(places) / spread - 1)).toBeLessThan(4 / Math.sqrt(2 * trials));
  });

  test('never leaves the wire, even with a gap joined or open', () => {
    const random = streams('jockey').of('ends');
    for (const put of [{ left: 0, right: 4 }, { left: Infinity, right: 4 }])
      for (let i = 0; i < 500; i++) {
        const l = Number(readBalance(ideal, bench, put, 'hurried', random));
        expect(l).toBeGreaterThanOrEqual(0);
        expect(l).toBeLessThanOrEqual(100);
      }
  });

  test('is read to the millimetre', () => {
    const random = streams('jockey').of('digits');
    for (let i = 0; i < 500; i++) expect(readBalance(ideal, bench, gaps, 'usual', random)).toMatch(/^\d{2}\.\d$/);
  });
});

test('the rule is read to the millimetre, round the true length', () => {
  const random = streams('rule').of('lengths');
  const read = Array.from({ length: trials }, () => readRule(bench, 60.04, 'usual', random));
  for (const text of read) expect(text).toMatch(/^\d{2}\.\d$/);
  expect(Math.abs(mean(read.map(Number)) - 60.04)).toBeLessThan(0.005);
});
