import { expect, test } from 'vitest';
import { brokenSum } from '../../generators/sheets/broken-sum.ts';

const broken = (tex: string) => brokenSum({ tex, spoken: 'as before' });

test('a sum of four terms above a fraction bar stays in one row', () => {
  const tex = 'X = \\frac{3.51 + 3.49 + (-0.02) + 3.50}{4} = 3.50\\;\\Omega';
  expect(broken(tex).tex).toBe(tex);
});

test('a longer one stands in rows of four, each later row after its plus sign; what is around it stays', () => {
  expect(broken('d = \\frac{1.1 + 1.2 + 1.3 + 1.4 + 1.5 + 1.6}{6} = 1.35\\;\\mathrm{mm}')).toEqual({
    tex: 'd = \\frac{\\begin{gathered}1.1 + 1.2 + 1.3 + 1.4 \\\\ {}+ 1.5 + 1.6\\end{gathered}}{6} = 1.35\\;\\mathrm{mm}',
    spoken: 'as before',
  });
});

test('a sum that is no fraction is left alone', () => {
  const tex = 'a = 1 + 2 + 3 + 4 + 5 + 6';
  expect(broken(tex).tex).toBe(tex);
});
