import { expect, test } from 'vitest';
import { readExpression } from '../../generators/quantities/expression.ts';
import { byFourFigureTables } from '../../generators/quantities/four-figure.ts';
import { streams } from '../../generators/random.ts';
import { withTables } from './student.ts';

const read = (text: string) => readExpression(text, new Set(['a', 'b', 'c', 'd']));

test.each<[string, (v: number[]) => { over: number[]; under: number[] }]>([
  ['a * b / c', ([a, b, c]) => ({ over: [a!, b!], under: [c!] })],
  ['pi * a^2 * b / (4 * c)', ([a, b, c]) => ({ over: [Math.PI, a!, a!, b!], under: [4, c!] })],
  ['pi * a^2', ([a]) => ({ over: [Math.PI, a!, a!], under: [] })],
  ['100 * (a - b) / c', ([a, b, c]) => ({ over: [100, a! - b!], under: [c!] })],
])('work by tables of %s is inside, and reaches half of the way out', (text, factors) => {
  const random = streams('four-figure tables').of(text);
  let farthest = 0;
  for (let i = 0; i < 20_000; i++) {
    const { over, under } = factors([random.between(2, 9.99), random.between(1, 1.99), random.between(1, 9.99)]);
    const value = over.reduce((x, y) => x * y, 1) / under.reduce((x, y) => x * y, 1);
    const [low, high] = byFourFigureTables([value, value], read(text));
    farthest = Math.max(farthest, Math.abs(withTables(over, under) - value) / ((high - low) / 2));
  }
  expect(farthest).toBeLessThanOrEqual(1);
  expect(farthest).toBeGreaterThan(0.5);
});

test.each(['a - b', 'a', '100 - a', '-(a - b)', 'a + b + c'])('%s needs no tables', (text) => {
  expect(byFourFigureTables([1, 2], read(text))).toEqual([1, 2]);
});
