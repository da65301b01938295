/**
 * A formula without fractions, roots, bars and indices as text in the maths typeface, with the letters and spaces that
 * the browser would give its MathML (MathML Core, math-auto and the operator dictionary; W3C): the same to the eye, in
 * one element where MathML takes five to ten. Nothing where it takes more than a line.
 */
export function oneLine(math: string): string | undefined {
  const inside = /^<math[^>]*>([^]*)<\/math>$/.exec(math)?.[1];
  const text = inside
    ?.replace(POWER, (_, base: string, digits?: string, negative?: string) => base + raised(digits ?? `−${negative}`))
    .replace(/(?<=^|<mrow>)<mo>(?!=)/g, '<mo form="prefix">')
    .replace(/<\/?mrow>/g, '')
    .replace(/<m(?:n|text)>([^<]*)<\/m(?:n|text)>/g, '$1')
    .replace(/<mi>([^<]*)<\/mi>/g, (_, name: string) => italic(name))
    .replace(/<mo([^>]*)>([^<]*)<\/mo>/g, spaced);
  return text?.includes('<') ? undefined : text;
}

/** A number or a letter to a whole power. */
const POWER = /<msup>(<m[ni]>[^<]*<\/m[ni]>)(?:<mn>(\d+)<\/mn>|<mrow><mo>−<\/mo><mn>(\d+)<\/mn><\/mrow>)<\/msup>/g;

const raised = (exponent: string) => exponent.replace(/./g, (sign) => '⁻⁰¹²³⁴⁵⁶⁷⁸⁹'['−0123456789'.indexOf(sign)]!);

/** 5/18 and 4/18 of an em. */
const THICK = '\u205f\u200a';
const MEDIUM = '\u205f';

const SPACES: Record<string, string> = { '=': THICK, '×': MEDIUM, '+': MEDIUM, '−': MEDIUM, '±': MEDIUM, '(': '', ')': '' };

/** An operator with its spaces, where they are known; a sign, which begins its row, has none. */
function spaced(whole: string, attributes: string, operator: string): string {
  const space = SPACES[operator];
  if (space === undefined) return whole;
  return attributes.includes('prefix') ? operator : space + operator + space;
}

/** First letters of the mathematical italics, beside the plain ones (Unicode, Mathematical Alphanumeric Symbols). */
const ALPHABETS: readonly [first: string, last: string, italic: number][] = [
  ['A', 'Z', 0x1d434],
  ['a', 'z', 0x1d44e],
  ['Α', 'Ω', 0x1d6e2],
  ['α', 'ω', 0x1d6fc],
];

/** A name of one letter is in italics; h has its place elsewhere, as Planck's constant. */
function italic(name: string): string {
  if (name === 'h') return 'ℎ';
  const alphabet = ALPHABETS.find(([first, last]) => name.length === 1 && name >= first && name <= last);
  return alphabet ? String.fromCodePoint(alphabet[2] + name.charCodeAt(0) - alphabet[0].charCodeAt(0)) : name;
}
