import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';
import { MATHS_WHOLE } from '../../generators/press/maths-face.ts';

const span = (first: number, last: number) => String.fromCodePoint(...Array.from({ length: last - first + 1 }, (_, i) => first + i));

/** What formulas of sheets are written in; a document with another character carries the whole font. */
const CHARACTERS = [
  span(0x20, 0x7e),
  span(0xa0, 0xff),
  span(0x391, 0x3c9), // Greek
  span(0x1d434, 0x1d467), // italic Latin letters
  span(0x1d6e2, 0x1d71b), // italic Greek letters
  '\u2002\u2003\u2004\u2005\u2009\u200a\u202f\u205f', // spaces
  'ℎ−×·±∑∏√‾¯→⇒≈≠≤≥∞∝∂∘°′″–—‘’“”…⋅∣ΩΔ',
  '⁰¹²³⁴⁵⁶⁷⁸⁹⁻₀₁₂₃₄₅₆₇₈₉',
].join('');

/** The part of the maths font that sheets are printed with. */
export function cutMaths(): Promise<Buffer> {
  return subsetFont(readFileSync(createRequire(import.meta.url).resolve(MATHS_WHOLE)), CHARACTERS, { targetFormat: 'woff2' });
}
