import { fileURLToPath } from 'node:url';
import nunjucks from 'nunjucks';
import type { Line } from '../quantities/working.ts';
import { printedFormula } from '../sheets/mathml.ts';
import { fontUrl } from './fonts.ts';
import { mathsFace } from './maths-face.ts';

const folder = fileURLToPath(new URL('../../templates', import.meta.url));

/** What a sentence's blanks are filled with: a formula, plain text, or room to write with the unit after it. */
type Blanks = Record<string, Line | string | { unit: Line }>;

/** The one Nunjucks environment, for the press and for the site; a missing variable is an error. */
export function templates(): nunjucks.Environment {
  const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader(folder), {
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
  const safe = (html: string) => new nunjucks.runtime.SafeString(html);
  environment.addFilter('math', (line: Line) => safe(printedFormula(line, escape)));
  environment.addFilter('display', (line: Line) => safe(printedFormula(line, escape, 'display')));
  environment.addFilter('prose', (sentence: string, blanks: Blanks) => safe(prose(sentence, blanks)));
  environment.addFilter('cssString', (text: string) => safe(cssString(text)));
  environment.addFilter('sizeClass', (size: string) => `size-${size}`);
  environment.addGlobal('fontUrl', fontUrl);
  environment.addGlobal('mathsFace', mathsFace);
  return environment;
}

/**
 * A sentence of content with its named blanks filled: symbols as formulas, the rest as text. A stop stays at the
 * formula before it, and a unit at its number.
 */
function prose(sentence: string, blanks: Blanks): string {
  return sentence
    .split(/(\{\w+\}[.,;:)]*)/)
    .map((part) => {
      const [, name, stop = ''] = /^\{(\w+)\}(.*)$/.exec(part) ?? [];
      if (name === undefined) return escape(part).replace(/(^|\d) (?=(?:cm|mm|Ω|°C|%)(?!\p{L}))/gu, '$1\u00a0');
      const filling = blanks[name];
      if (filling === undefined) throw new Error(`no word for the blank {${name}} in "${sentence}"`);
      return typeof filling === 'string' ? escape(filling + stop) : tied(filling, stop);
    })
    .join('');
}

function tied(filling: Line | { unit: Line }, stop: string): string {
  const filled = 'unit' in filling ? `<span class="blank"></span> ${printedFormula(filling.unit, escape)}` : printedFormula(filling, escape);
  return `<span class="tied">${filled}${stop}</span>`;
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

function escape(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character]!);
}

/** Any text as a CSS string: what could end it is written as a code point. */
function cssString(text: string): string {
  return `"${text.replace(/["\\<\n\r\f\0]/g, (character) => `\\${character.codePointAt(0)!.toString(16)} `)}"`;
}
