import { expect, test } from 'vitest';
import { UserMistake } from '../generators/mistake.ts';

test.each([
  [{ what: 'no wires' }, 'no wires'],
  [{ file: 'class.csv', what: 'is empty' }, 'class.csv: is empty'],
  [{ file: 'class.csv', row: 14, field: 'roll', what: 'is blank' }, 'class.csv, row 14, roll: is blank'],
  [{ field: '--rows', what: 'is given twice' }, '--rows: is given twice'],
  [{ row: 0, what: 'is odd' }, 'row 0: is odd'],
])('a mistake %j is written with its place first', (mistake, words) => {
  expect(new UserMistake([mistake]).message).toBe(words);
});

test('several mistakes stand on a line each, and stay apart', () => {
  const mistakes = [{ what: 'one' }, { file: 'a.csv', what: 'two' }];
  const error = new UserMistake(mistakes);
  expect(error.message).toBe('one\na.csv: two');
  expect(error.mistakes).toEqual(mistakes);
});

test('a single sentence is a mistake without a place, and the cause is kept', () => {
  const cause = new Error('deep');
  const error = new UserMistake('say where', { cause });
  expect(error.mistakes).toEqual([{ what: 'say where' }]);
  expect(error.cause).toBe(cause);
  expect(error.name).toBe('UserMistake');
});
