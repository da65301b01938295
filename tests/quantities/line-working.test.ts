import { describe, expect, test } from 'vitest';
import { lineNumbers } from '../../generators/quantities/line-working.ts';
import type { Digits } from '../../generators/quantities/step.ts';
import { summaryMethods } from '../../generators/quantities/summary.ts';
import { round } from '../../generators/quantities/written.ts';
import { streams } from '../../generators/random.ts';

const digits: Digits = { figures: 3 };
const lines = ['slope', 'intercept', 'slope through origin'] as const;

/** The last side of a working, read as a calculator would: a fraction, or a difference with a product. */
function worked(tex: string): number {
  const side = tex.split(' = ').at(-1)!.replace(/(-?[\d.]+) \\times 10\^\{(-?\d+)\}/g, '$1e$2');
  const [, top, bottom] = /^\\frac\{([-\d.e]+)\}\{([-\d.e]+)\}$/.exec(side) ?? [];
  if (top !== undefined) return Number(top) / Number(bottom);
  const [, level, steep, middle] = /^([-\d.e]+) - ([-\d.e]+) \\times ([-\d.e]+)$/.exec(side)!;
  return Number(level) - Number(steep) * Number(middle);
}

describe('the numbers of a best-fit line lead to the result that is written, for any points', () => {
  test.each(lines)('%s', (by) => {
    const random = streams('line working').of(by);
    for (let i = 0; i < 500; i++) {
      const x = Array.from({ length: random.integer(3, 6) }, (_, row) => round(15 * (row + 1) + random.between(-3, 3), { decimals: 1 }, 'even'));
      const y = x.map((value) => round(random.between(-1, 1) + 0.04 * Number(value), { figures: 3 }, 'even'));
      const result = round(summaryMethods[by].value([x.map(Number), y.map(Number)]), digits, 'even');
      const tex = lineNumbers(by, { x: { tex: 'x', written: x }, y: { tex: 'y', written: y } }, result, digits);
      expect(round(worked(tex), digits, 'even'), tex).toBe(result);
    }
  });
});

test('the formula of least squares stands before its numbers, worked by hand', () => {
  const [x, y] = [['1', '2', '3'], ['2', '4', '7']];
  const columns = { x: { tex: 'q', written: x! }, y: { tex: 'R', written: y! } };
  expect(lineNumbers('slope', columns, '2.50', digits)).toBe('\\frac{\\sum (q - \\overline{q})(R - \\overline{R})}{\\sum (q - \\overline{q})^{2}} = \\frac{5.000}{2.000}');
  expect(lineNumbers('slope through origin', columns, '2.21', digits)).toBe('\\frac{\\sum q\\,R}{\\sum q^{2}} = \\frac{31.00}{14.00}');
  expect(lineNumbers('intercept', columns, '-0.667', digits)).toBe('\\overline{R} - \\frac{\\Delta R}{\\Delta q}\\,\\overline{q} = 4.333 - 2.500 \\times 2.000');
});
