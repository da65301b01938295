import type { Written } from '../quantities/step.ts';
import { plainText } from './plain-text.ts';
import { type StatedUnit, readUnit } from './stated-unit.ts';

/** The sign that parts whole and decimals. */
export type Decimal = 'point' | 'comma';

/** A number that a student wrote. */
export interface NumberEntry {
  is: 'number';
  /** Its digits as they were written, in the unit as it was written. */
  written: Written;
  unit?: StatedUnit;
  /** Marked as written without a unit, where units are not typed otherwise. */
  unitless?: true;
}

/** What stands in one cell of the answers. */
export type Entry =
  /** Nobody has typed it yet; the student left it blank; the student struck it out. */
  | { is: 'not entered' | 'left blank' | 'struck out' }
  | NumberEntry
  | Unreadable;

/** What is no answer that can be read. */
export interface Unreadable {
  is: 'unreadable';
  why: WhyUnreadable;
  /** What the text ends in, where that is what cannot be read. */
  ends?: string;
}

export type WhyUnreadable = 'noNumber' | 'date' | 'size' | 'unit' | 'sign' | 'comma' | 'point' | 'spaces';

/** What is typed where there is no number. */
export const BLANK = '-';
export const STRUCK_OUT = 'x';
/** Typed after a number that the student left without its unit. */
export const NO_UNIT = '!';

/**
 * Reads what was typed for one answer: 1.27, 1.27e0, 4.9×10⁻⁷, 4.9x10^-7, −0.03 mm, 2.63 ± 0.02 ohm, 0.000 000 49;
 * with a decimal comma 1,27. What could mean two things is unreadable and says why.
 */
export function readEntry(text: string, decimal: Decimal): Entry {
  const plain = plainText(text);
  if (plain === '') return { is: 'not entered' };
  if (plain === BLANK) return { is: 'left blank' };
  if (/^[x×]$/i.test(plain)) return { is: 'struck out' };
  return looksLikeDate(plain) ? unreadable('date') : readNumber(plain, decimal);
}

/** What spreadsheets make of a number with the other decimal sign, or of one with a stroke: 02.Jan, Feb 75, 2026-11-25, 01/02/2026. */
function looksLikeDate(plain: string): boolean {
  return (WITH_MONTH.test(plain) && MONTH.test(plain)) || IN_DIGITS.test(plain);
}

const WITH_MONTH = /^\d{1,2}[-. ]+\p{L}{3,4}\.?(?:[-. ]+\d{2,4})?$|^\p{L}{3,4}\.?[-. ]+\d{2,4}$/u;
const IN_DIGITS = /^\d{4}-\d{2}-\d{2}\b|^\d{1,2}([/.])\d{1,2}\1(?:\d{4}|\d{2})$/;

/** How months begin in the languages of Europe; a unit of that length begins otherwise. */
const MONTH = /jan|f[eé]|m[aä]r|mrz|apr|avr|abr|ma[iyg]|jui?[nl]|giu|lug|ago|au[gť]|aoû|se[pt]|o[ckt]t|nov|d[ei][cz]/iu;

const NUMBER = /^([+-]?)\s*(\d[\d ]*(?:[.,][\d ]*)?|[.,]\d[\d ]*)(?:\s*[eE]([+-]?\d+)(?!\d)|\s*[×xX·⋅*]\s*10(?:\s*\^\s*\(?\s*([+-]?\s?\d+)\s*\)?|([+-]\d+)))?(.*)$/u;

function readNumber(plain: string, decimal: Decimal): Entry {
  const bare = plain.replace(/\s*(?:±|\+\/?-)\s*\d+(?:[.,]\d+)?/u, '').replace(/^\(([^()]*)\)/, '$1');
  const [, sign, digits, ...rest] = NUMBER.exec(bare) ?? [];
  if (digits === undefined) return unreadable('noNumber');
  const mantissa = mantissaOf(digits.trim(), decimal);
  if (typeof mantissa !== 'string') return mantissa;
  const exponent = Number((rest[0] ?? rest[1] ?? rest[2] ?? '0').replace(/\s/g, ''));
  if (Math.abs(exponent) > MOST_EXPONENT || mantissa.length > MOST_DIGITS) return unreadable('size');
  const minus = sign === '-' && /[1-9]/.test(mantissa) ? '-' : '';
  const written = `${minus}${mantissa}${exponent === 0 ? '' : `e${exponent}`}`;
  return withUnit(written, rest[3]!.trim());
}

const MOST_EXPONENT = 30;
const MOST_DIGITS = 25;

function withUnit(written: Written, after: string): Entry {
  if (after === '') return { is: 'number', written };
  if (after === NO_UNIT) return { is: 'number', written, unitless: true };
  const unit = readUnit(after);
  return unit ? { is: 'number', written, unit } : unreadable(LOST.test(after) ? 'sign' : 'unit', after);
}

/** What a spreadsheet leaves of a sign that the alphabet of its file has not. */
const LOST = /^[?\ufffd](?:\s|$)/u;

const unreadable = (why: WhyUnreadable, ends?: string): Unreadable => ({ is: 'unreadable', why, ...(ends !== undefined && { ends }) });

/** Digits with a point; groups of three may stand apart, as the SI brochure has them. */
function mantissaOf(digits: string, decimal: Decimal): string | Entry {
  const mark = decimal === 'comma' ? ',' : '.';
  const other = decimal === 'comma' ? '.' : ',';
  if (digits.includes(other)) return unreadable(decimal === 'comma' ? 'point' : 'comma');
  const [whole = '', decimals] = digits.split(mark);
  if (!grouped(whole, /^\d{1,3}(?: \d{3})+$/) || !grouped(decimals ?? '', /^(?:\d{3} )+\d{1,3}$/)) return unreadable('spaces');
  const before = whole.replaceAll(' ', '').replace(/^0+(?=\d)/, '') || '0';
  return decimals === undefined || decimals === '' ? before : `${before}.${decimals.replaceAll(' ', '')}`;
}

const grouped = (digits: string, groups: RegExp) => !digits.includes(' ') || groups.test(digits);
