import { expect, test } from 'vitest';
import { mathml, printedFormula } from '../../generators/sheets/mathml.ts';
import { oneLine } from '../../generators/sheets/one-line.ts';

const M = '\u205f';
const T = '\u205f\u200a';

test.each([
  ['a letter is italic', 'R', '𝑅'],
  ['h too', 'h', 'ℎ'],
  ['a Greek letter', '\\rho', '𝜌'],
  ['upright letters stay upright', '\\mathrm{LC}', 'LC'],
  ['operators and equals signs have their spaces', 'd = 0.368 - 0.002', `𝑑${T}=${T}0.368${M}−${M}0.002`],
  ['brackets have none', '(100 - l)', `(100${M}−${M}𝑙)`],
  ['a sign has none: at the start', '-5.5', '−5.5'],
  ['a sign has none: after an equals sign', 'x = {-5.5}', `𝑥${T}=${T}−5.5`],
  ['whole powers are raised', '4.16 \\times 10^{-7}', `4.16${M}×${M}10⁻⁷`],
  ['a square', 'd^{2}', '𝑑²'],
])('%s', (_, tex, text) => expect(oneLine(mathml(tex))).toBe(text));

test.each(['\\frac{R}{l}', '\\overline{X}', '\\rho_{t}', '\\sqrt{2}', 'd^{n}', '(a^{2})^{2}', 'a < b', 'a \\to b'])('%s stays MathML', (tex) => expect(oneLine(mathml(tex))).toBeUndefined());

test('a formula says in words what it shows, be it text or MathML, and may be broken before its second equals sign', () => {
  const printed = printedFormula({ tex: 'X = \\frac{6}{2} = 3.0', spoken: 'X equals "three"' }, (text) => text.replaceAll('"', '&quot;'));
  expect(printed).toMatch(/^<span class="math" role="img" aria-label="X equals &quot;three&quot;"><math[^]*<\/math><wbr>\u205f\u200a=\u205f\u200a3\.0<\/span>$/);
});
