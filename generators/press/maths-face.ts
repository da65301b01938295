import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { characters } from './woff2.ts';

/** The maths font, a path inside the installed packages: 400 kB, which take the browser as long as a page of a sheet. */
export const MATHS_WHOLE = '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2';

/** The part of it that sheets need, made by `npm run fonts`. */
export const MATHS_CUT = fileURLToPath(new URL('../../templates/fonts/stix-two-math-cut.woff2', import.meta.url));

let cut: Set<number> | undefined;

/** The part that sheets need has a glyph for this character. */
export function isInMathsCut(character: string): boolean {
  cut ??= characters(readFileSync(MATHS_CUT));
  return cut.has(character.codePointAt(0)!) || /\s/.test(character);
}

/** The file of the maths font for a document with this HTML: the whole one where a character asks for it, or nothing is known. */
export function mathsFace(html?: string): string {
  return html !== undefined && [...new Set(formulas(html))].every(isInMathsCut) ? MATHS_CUT : MATHS_WHOLE;
}

const FORMULA = /<math[^]*?<\/math>|<span class="(?:math|plain)"[^>]*>[^<]*/g;

/** What is seen of the formulas. */
function formulas(html: string): string {
  const shown = (html.match(FORMULA) ?? []).join('').replace(/<[^>]*>/g, '');
  return shown.replace(/&(?:amp|lt|gt|quot|#39);/g, '&');
}
