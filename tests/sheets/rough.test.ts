import { expect, test } from 'vitest';
import { withUncertainty } from '../../generators/sheets/rough.ts';
import { english } from '../quantities/words.ts';

// Two significant figures in the uncertainty, the value to the same place: JCGM 100:2008, 7.2.6.
test.each([
  [3.5137, 0.0452, 'Ω', '\\left(3.514 \\pm 0.045\\right)\\;\\Omega'],
  [4.1519e-7, 1.94e-8, 'Ω m', '\\left(4.15 \\pm 0.19\\right) \\times 10^{-7}\\;\\Omega\\,\\mathrm{m}'],
  [9.96e-7, 4.6e-8, 'Ω m', '\\left(9.96 \\pm 0.46\\right) \\times 10^{-7}\\;\\Omega\\,\\mathrm{m}'],
  [12.3456, 1.234, 'cm', '\\left(12.3 \\pm 1.2\\right)\\;\\mathrm{cm}'],
  [2.5, 0.00123, 'Ω', '\\left(2.5000 \\pm 0.0012\\right)\\;\\Omega'],
])('%d with %d in %s', (value, uncertainty, unit, tex) => {
  expect(withUncertainty(value, uncertainty, unit, english).tex).toBe(tex);
});

test('is read aloud with its brackets, power and unit', () => {
  expect(withUncertainty(4.1519e-7, 1.94e-8, 'Ω m', english).spoken).toBe(
    'open bracket 4.15 plus or minus 0.19 close bracket times ten to the power minus 7 ohm metres',
  );
});
