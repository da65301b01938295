import { z } from 'zod';
import { asChoice, asList } from './from-text.ts';

/** Sections of a sheet, in the order in which they are printed. */
export const SECTIONS = [
  'aim', 'apparatus', 'circuit', 'formula', 'check', 'procedure', 'observations',
  'working', 'result', 'precautions', 'errors', 'viva', 'cautions',
] as const;
export type Section = (typeof SECTIONS)[number];

/** Words that stand for a set of sections. */
const SETS = {
  practice: ['observations', 'working', 'result', 'cautions'],
  record: SECTIONS,
} as const satisfies Record<string, readonly Section[]>;

/** A sheet of the short kind is set close, so that it fills one page; its formulas stand where they are worked. */
export function isShort(sections: readonly Section[]): boolean {
  const short: readonly Section[] = SETS.practice;
  return sections.every((section) => short.includes(section));
}

/** All that may be written for sections. */
export const SECTION_WORDS = [...Object.keys(SETS), ...SECTIONS];

/** A set's word or a list of sections, in any order; gives the sections in printed order, always with the cautions. */
export const sectionsField = z.preprocess(fromText, z.array(z.enum(SECTIONS)).min(1)).transform(inPrintedOrder);

function fromText(value: unknown): unknown {
  const list = asList(asChoice(SECTION_WORDS))(value);
  if (!Array.isArray(list) || list.length !== 1) return list;
  const [word]: unknown[] = list;
  return word === 'practice' || word === 'record' ? SETS[word] : list;
}

/** A sheet never goes out without its cautions. */
function inPrintedOrder(asked: readonly Section[]): Section[] {
  return SECTIONS.filter((section) => section === 'cautions' || asked.includes(section));
}
