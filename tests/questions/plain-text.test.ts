import { expect, test } from 'vitest';
import { plainText } from '../../generators/questions/plain-text.ts';

test.each([
  ['\\frac{P\\,\\left(100 - l\\right)}{l}', 'P (100 − l) / l'],
  ['\\frac{\\left(1 + t\\right)\\,X}{Y} - 1', '(1 + t) X / Y − 1'],
  ['\\frac{\\left(1 + t\\right)\\,X - 1}{Y}', '((1 + t) X − 1) / Y'],
  ['\\frac{Q\\,l_{1}}{100 - l_1}', 'Q l₁ / (100 − l₁)'],
  ['\\Delta R = 0.01\\;\\Omega', 'ΔR = 0.01 Ω'],
  ['4.97 \\times 10^{-7}\\;\\Omega\\,\\mathrm{m}', '4.97 × 10⁻⁷ Ω m'],
  ['\\sqrt{T^{2} - 4 \\times C}', '√(T² − 4 × C)'],
  ['\\overline{d} = {-0.02}\\;\\mathrm{mm}', 'd̄ = −0.02 mm'],
  ['20\\;{}^{\\circ}\\mathrm{C}', '20 °C'],
  ['60\\;{}^{\\circ}', '60°'],
  ['\\alpha = \\frac{k - 1}{t_2}', 'α = (k − 1) / t₂'],
])('%s is %s', (tex, text) => expect(plainText(tex)).toBe(text));

test('a command that it does not know is a mistake of the program', () => {
  expect(() => plainText('\\oint x')).toThrow('no plain text for \\oint');
});
