import { expect, test } from 'vitest';
import { familyNamed } from '../../generators/questions/index.ts';
import { solve } from '../../generators/questions/solve.ts';

const answerOf = (family: string, givens: Record<string, string>) => solve(familyNamed(family), Object.entries(givens).map(([name, value]) => ({ name, value }))).answers[0]!;

test('an answer that ends is accepted as it is and in no other way', () => {
  expect(answerOf('balance', { P: '10', l: '40' })).toMatchObject({ shown: '15.0', accept: [15, 15] });
});

test('one that does not end is accepted from its three figures to its exact value', () => {
  const { shown, accept, exact } = answerOf('balance', { P: '10', l: '30' });
  expect([shown, accept[0]]).toEqual(['23.3', 23.3]);
  expect(accept[1]).toBeCloseTo(exact, 9);
});

test('one of four figures is accepted as it is and rounded to three', () => {
  const { shown, accept } = answerOf('end-corrections', { P: '20', l: '61.5', alpha: '1', beta: '2' });
  expect(shown).toBe('12.96');
  expect(accept[0]).toBeCloseTo(12.96, 9);
  expect(accept[1]).toBe(13);
});

test('a maximum permissible error is shown to three figures and accepted to two', () => {
  const { shown, accept, exact } = answerOf('error-of-resistivity', { by: 'bridge', X: '2.50', dX: '0.03', L: '40.0', dL: '0.1', d: '0.71', dd: '0.02' });
  expect([shown, accept[1]]).toEqual(['7.08', 7.1]);
  expect(accept[0]).toBeLessThanOrEqual(exact);
});
