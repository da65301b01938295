import { describe, expect, test } from 'vitest';
import { familyNamed } from '../../generators/questions/index.ts';
import { solve } from '../../generators/questions/solve.ts';

/** A published question: what is given, and the answer to the digits that were printed. */
interface Example {
  says: string;
  source: string;
  family: string;
  givens: Record<string, string>;
  answers: Record<string, string>;
  /** The answer as the key's own chain has it, each line from the rounded line above, where the printed answer was found so. */
  chained?: true;
}

const examples: Example[] = [
  { says: 'X from 12.5 Ω in the right gap', source: 'NCERT Physics XII, ch. 3, exercises', family: 'balance', givens: { Q: '12.5', l: '39.5' }, answers: { P: '8.2' } },
  { says: 'the null after an interchange', source: 'NCERT Physics XII, ch. 3, exercises', family: 'interchange', givens: { Q: '12.5', l1: '39.5' }, answers: { P: '8.2', l2: '60.5' } },
  { says: 'X from 50 Ω at 40 cm', source: 'a board examination, year not known; source from memory', family: 'balance', givens: { Q: '50', l: '40' }, answers: { P: '33.33' } },
  { says: 'X from 1 Ω at 20 cm', source: 'all-India pre-medical test 1999; source from memory', family: 'balance', givens: { Q: '1', l: '20' }, answers: { P: '0.25' } },
  { says: 'the product of two resistances', source: 'JEE Main', family: 'combination', givens: { Q1: '10', l1: '60', Q2: '3', l2: '40' }, answers: { Z: '30' } },
  { says: '15 Ω in series with the smaller', source: 'MHT-CET', family: 'series', givens: { gap: 'left', S: '15', l1: '20', l2: '40' }, answers: { X: '9' } },
  { says: 'a resistance in series that moves the null from 40 to 80 cm', source: 'an entrance examination; source from memory', family: 'series', givens: { gap: 'left', X: '4', l1: '40', l2: '80' }, answers: { S: '20' } },
  { says: '12 Ω across the right gap', source: 'NCERT Physics XII, ch. 3, worked example; source from memory', family: 'shunt', givens: { gap: 'right', S: '12', l1: '33.7', l2: '51.9' }, answers: { X: '13.5', Y: '6.86' }, chained: true },
  { says: 'the shunt from the right gap and both nulls', source: 'a board examination; source from memory', family: 'shunt', givens: { gap: 'right', X: '13.473', l1: '33.7', l2: '51.9' }, answers: { S: '12.00' } },
  { says: 'a shunt on 9 Ω that moves the null by 25 cm', source: 'an entrance examination, not identified', family: 'shunt', givens: { gap: 'right', Y: '3', X: '9', s: '25' }, answers: { S: '4.5' } },
  { says: 'the movement from a shunt of 2 Ω', source: 'JEE Main 2024', family: 'shunt', givens: { gap: 'right', Y: '2', l1: '40', S: '2' }, answers: { s: '22.5' } },
  { says: 'both resistances from a shunt of 10 Ω', source: 'a board examination, not identified', family: 'shunt', givens: { gap: 'right', S: '10', l1: '40', l2: '50' }, answers: { Y: '3.33', X: '5' } },
  { says: 'a resistance in parallel with its equal', source: 'a board examination, not identified', family: 'equal-shunts', givens: { R: '5', n: '2', m: '1.5' }, answers: { S: '10' } },
  { says: 'the movement at an interchange of 8 and 24 Ω', source: 'an entrance examination, not identified', family: 'interchange', givens: { P: '8', Q: '24' }, answers: { s: '50' } },
  { says: '2 Ω and more, interchanged, 20 cm', source: 'IIT-JEE', family: 'interchange', givens: { P: '2', s: '20' }, answers: { Q: '3' } },
  { says: '4X against Y', source: 'an entrance examination, not identified', family: 'scaling', givens: { gap: 'left', k: '4', l1: '20' }, answers: { l2: '50' } },
  { says: '3X against Y', source: 'JEE Main 2013', family: 'scaling', givens: { gap: 'left', k: '3', l1: '40' }, answers: { l2: '66.67' } },
  { says: 'equal gaps, the right one doubled (a movement of 50/3 cm to the left)', source: 'an entrance examination, not identified', family: 'scaling', givens: { gap: 'right', k: '2' }, answers: { s: '-16.67' } },
  { says: 'a ring between opposite points', source: 'HSC', family: 'ring', givens: { gap: 'left', Y: '11', l: '45' }, answers: { r: '36' } },
  { says: 'end corrections of 2 and 1 cm', source: 'JEE', family: 'end-corrections', givens: { P: '15', l: '43', alpha: '2', beta: '1' }, answers: { Q: '19.33' } },
  { says: 'end corrections from 50 and 100 Ω', source: 'NSEP 2016', family: 'end-corrections-found', givens: { P: '50', Q: '100', l1: '33', l2: '67' }, answers: { alpha: '1', beta: '1' } },
  { says: 'the best S where 100 Ω gives 2.9 cm', source: 'NCERT Exemplar Physics XII', family: 'best-choice', givens: { S1: '100', l1: '2.9' }, answers: { S2: '3' } },
  { says: 'resistance as the root of the length, equal gaps', source: 'JEE Main 2019', family: 'non-uniform', givens: { varies: 'inverse-root', P: '1', Q: '1' }, answers: { l: '25' } },
  { says: 'a bridge wire of twice the resistance a length', source: 'JEE Main 2024', family: 'bridge-wire', givens: { change: 'resistance', k: '2', l1: '40' }, answers: { l2: '40' } },
  { says: 'the left wire drawn to twice its length (one published key prints 400/11)', source: 'an entrance examination; source from memory', family: 'reshaped', givens: { how: 'stretched', gap: 'left', n: '2', l1: '40' }, answers: { l2: '72.7' } },
  { says: 'a coil at 0 and 100 °C', source: 'KCET', family: 'temperature', givens: { gap: 'left', Y: '4', l1: '50', l2: '60', t1: '0', t2: '100' }, answers: { alpha: '0.005' } },
  { says: 'X and the current at balance', source: 'a board examination; source from memory', family: 'currents', givens: { cell: 'ideal', Q: '6', l: '40', sigma: '0.1', E: '5' }, answers: { P: '4', I: '1.0' } },
  { says: 'the length for one ohm', source: 'NEET 2020', family: 'length-per-ohm', givens: { Q: '10', a: '3', b: '2', L: '1.5' }, answers: { y: '0.10' } },
  { says: 'ratio arms exchanged', source: 'JEE Main 2019', family: 'arms-swapped', givens: { R1: '400', R2: '405' }, answers: { X: '402.5' } },
  { says: 'four arms', source: 'MIT 8.02, course notes on direct-current circuits', family: 'wheatstone', givens: { arm: 'plain', P: '6', Q: '1.5', R: '12' }, answers: { S: '3.0' } },
  { says: 'the error of a resistivity from meters', source: 'JEE Main 2021', family: 'error-of-resistivity', givens: { by: 'meters', V: '5', dV: '0.1', I: '2', dI: '0.01', L: '10', dL: '0.1', d: '5', dd: '0.01' }, answers: { p: '3.9' } },
  { says: 'a screw gauge with a positive zero error', source: 'a worked example on the screw gauge, not identified', family: 'screw-gauge', givens: { zero: 'known', m: '0.5', n: '27', c: '0.01', e: '0.05' }, answers: { d: '0.72' } },
  { says: 'mean and population standard deviation of a diameter', source: 'JEE Main 2020', family: 'diameter-report', givens: { sd: 'population', d: '5.50,5.55,5.45,5.65' }, answers: { mean: '5.54', s: '0.07' } },
  ...([['21.70', '180.41', '2.65'], ['35.50', '90.85', '0.99'], ['48.30', '53.52', '0.54'], ['67.90', '23.64', '0.27']] as const).map(([l, X, dX]): Example => ({
    says: `a slide wire at ${l} cm, 50 Ω, σ of 0.25 cm`,
    source: 'a student laboratory report',
    family: 'error-of-x',
    givens: { gap: 'right', R: '50', l, dl: '0.25' },
    answers: { X, dX },
  })),
  { says: '20 m of 12-gauge copper', source: 'OpenStax College Physics 2e, ch. 20', family: 'resistivity', givens: { rho: '1.72e-8', L: '20.0', d: '2.053' }, answers: { X: '0.104' } },
];

describe('published questions come out as published, to the printed digits', () => {
  test.each(examples.map((example) => [`${example.says} (${example.source})`, example] as const))('%s', (_, { family, givens, answers, chained }) => {
    const worked = solved(family, givens);
    for (const [id, printed] of Object.entries(answers)) {
      const answer = worked.answers.find((one) => one.id === id);
      expect(answer, `${id} is asked`).toBeDefined();
      expect(sameToPrintedDigits(chained ? Number(answer!.shown) : answer!.exact, printed), `${id} is ${answer!.exact}, published ${printed}`).toBe(true);
    }
  });
});

test('the row that does not fit is the fourth (JEE Main 2019)', () => {
  const { verdicts, values } = solved('inconsistent-row', { gap: 'right', R: '1000,100,10,1', l: '60,13,1.5,1.0' });
  expect(verdicts).toEqual({ row: '4' });
  expect(values.exact.get('X')!.map(Math.round)).toEqual([667, 669, 657, 99]);
});

test('the key of 400/11 cm for a drawn wire is wrong: the null point would come nearer to the end beside a larger resistance', () => {
  const [answer] = solved('reshaped', { how: 'stretched', gap: 'left', n: '2', l1: '40' }).answers;
  const published = 400 / 11;
  expect(answer!.fraction).toBe('800/11');
  // In the printed key the left gap would have become smaller than it was: 36.4 : 63.6 is less than 40 : 60.
  expect(published / (100 - published)).toBeLessThan(40 / 60);
  expect(answer!.exact / (100 - answer!.exact)).toBeCloseTo(4 * (40 / 60), 9);
});

function solved(family: string, givens: Record<string, string>) {
  return solve(familyNamed(family), Object.entries(givens).map(([name, value]) => ({ name, value })));
}

/** Within half a unit of the last digit that was printed. */
function sameToPrintedDigits(value: number, printed: string): boolean {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return Math.abs(value - Number(printed)) <= 0.5 * 10 ** -decimals * (1 + 1e-9);
}
