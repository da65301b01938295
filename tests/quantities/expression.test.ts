import { describe, expect, test } from 'vitest';
import { namesIn, readExpression } from '../../generators/quantities/expression.ts';

const read = (text: string) => readExpression(text, new Set(['R', 'W', 'l', 'x']));

describe('forms that a formula may take', () => {
  test.each([
    ['R * (W - l) / l', ['R', 'W', 'l']],
    ['pi * x^2', ['x']],
    ['sqrt(x) + x', ['x']],
    ['l + W - l', ['l', 'W']],
  ])('%s names %j, each once, in the order written', (text, names) => {
    expect(namesIn(read(text))).toEqual(names);
  });
  test('the first power is the base itself', () => {
    expect(read('x^1')).toEqual(read('x'));
  });
});

describe('anything else is refused', () => {
  test.each([
    ['x^-1', 'whole number'],
    ['x^0.5', 'whole number'],
    ['x^0', 'whole number'],
    ['x^R', 'whole number'],
    ['sin(x)', 'not a form'],
    ['sqrt(x, 2)', 'not a form'],
    ['sqrt()', 'not a form'],
    ['x!', 'no operator'],
    ['+x', 'no operator'],
    ['x mod 2', 'no operator'],
    ['x > 2', 'no operator'],
    ['[x, 1]', 'not a form'],
    ['x = 2', 'not a form'],
    ['"2" * x', 'not a form'],
    ['true * x', 'not a form'],
    ['x; R', 'not a form'],
    ['2 cm', 'names cm'],
    ['y', 'names y'],
    ['', 'not a form'],
  ])('%s', (text, word) => {
    expect(() => read(text)).toThrow(word);
  });
});
