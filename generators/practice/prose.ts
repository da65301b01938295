import type { Line } from '../quantities/working.ts';
import { formulaHtml } from './fillings.ts';

/** What a sentence's blanks are filled with. */
export type Blanks = Readonly<Record<string, Line | string | { unit: Line }>>;

/** A sentence of content with its named blanks filled, as HTML; a stop stays at the formula before it. */
export function prose(sentence: string, blanks: Blanks): string {
  return sentence
    .split(/(\{\w+\}[.,;:)]*)/)
    .map((part) => {
      const [, name, stop = ''] = /^\{(\w+)\}(.*)$/.exec(part) ?? [];
      if (name === undefined) return escape(part);
      const filling = blanks[name];
      if (filling === undefined) throw new Error(`no word for the blank {${name}} in "${sentence}"`);
      if (typeof filling === 'string') return escape(filling + stop);
      const line = 'unit' in filling ? filling.unit : filling;
      return `<span class="tied">${formulaHtml(line)}${stop}</span>`;
    })
    .join('');
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text as HTML. */
export const escape = (text: string) => text.replace(/[&<>"']/g, (sign) => ENTITIES[sign]!);
