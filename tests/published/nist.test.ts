import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fitThroughOrigin } from '../../generators/quantities/origin-line.ts';
import { fitLine, mean, standardDeviation } from '../../generators/quantities/summary.ts';
import { expectWithin } from '../quantities/numerical.ts';
import { lottery, michelson, norris, numAcc1, numAcc2, numAcc3, numAcc4 } from './nist-data.ts';

// Certified values of the NIST StRD, univariate summary statistics. Data such as 10000000.2 do not fit a double, and
// what that costs the standard deviation sets the tolerance: 1e-9 for NumAcc3, 1e-7 for NumAcc4.
describe('mean and standard deviation have the certified values of the NIST StRD', () => {
  test.each([
    ['Lottery', lottery, 518.95871559633, 291.699727470969, 1e-12],
    ['Michelso', michelson, 299.8524, 0.0790105478190518, 1e-12],
    ['NumAcc1', numAcc1, 10000002, 1, 1e-12],
    ['NumAcc2', numAcc2, 1.2, 0.1, 1e-12],
    ['NumAcc3', numAcc3, 1000000.2, 0.1, 1e-9],
    ['NumAcc4', numAcc4, 10000000.2, 0.1, 1e-7],
  ])('%s', (_, data, certifiedMean, certifiedDeviation, fraction) => {
    expectWithin(mean(data), certifiedMean, 1e-13);
    expectWithin(standardDeviation(data), certifiedDeviation, fraction);
  });
});

// NIST StRD, linear regression, data set Norris.
describe('a line has the certified values of the NIST StRD, Norris', () => {
  const line = fitLine(norris.x, norris.y);

  test.each([
    ['slope', 1.00211681802045],
    ['intercept', -0.262323073774029],
    ['scatter', 0.884796396144373],
    ['uSlope', 0.429796848199937e-3],
    ['uIntercept', 0.232818234301152],
  ] as const)('%s', (id, certified) => {
    expectWithin(line[id], certified, 1e-11);
  });
});

// NIST StRD, linear regression without an intercept; data and certified values from memory. The file writes 15 figures.
describe('a line through the origin has the certified values of the NIST StRD', () => {
  test.each([
    ['NoInt1', Array.from({ length: 11 }, (_, i) => 60 + i), Array.from({ length: 11 }, (_, i) => 130 + i), 2.07438016528926, 0.165289256198347e-1, 3.56753034006338],
    ['NoInt2', [4, 5, 6], [3, 4, 4], 0.727272727272727, 0.420827318078432e-1, 0.369274472937998],
  ])('%s', (_, x, y, slope, uSlope, scatter) => {
    const line = fitThroughOrigin(x, y);
    expectWithin(line.slope, slope, 1e-13);
    expectWithin(line.uSlope, uSlope, 1e-12);
    expectWithin(line.scatter, scatter, 1e-12);
  });
});

// Debian's python3-scipy carries the original file.
const original = '/usr/lib/python3/dist-packages/scipy/stats/tests/data/nist_linregress/Norris.dat';

test.skipIf(!existsSync(original))('the data typed here are those of the original file that comes with scipy', () => {
  const lines = readFileSync(original, 'utf8').split('\n');
  const rows = lines.slice(60, 96).map((line) => line.trim().split(/\s+/).map(Number));
  expect(rows).toEqual(norris.y.map((y, row) => [y, norris.x[row]]));
});
