import { Decimal } from 'decimal.js';
import { didYouMean } from '../near-miss.ts';
import { quote } from './quote.ts';
import type { Gauge } from './wire-ask.ts';

/** One piece of a wire as a teacher writes it. */
export type WirePart = { material: string } | { gauge: Gauge } | { cm: number } | { problem: string };

const UNITS = ['SWG', 'AWG', 'cm', 'mm', 'm'];
/** Centimetres in a unit of length. Millimetres are kept for the diameter. */
const LENGTHS: Record<string, number> = {
  cm: 1, cms: 1, centimetre: 1, centimetres: 1, centimeter: 1, centimeters: 1,
  m: 100, metre: 100, metres: 100, meter: 100, meters: 100,
};
const DIAMETERS = ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'];
/** Words that may stand between the parts and say nothing. */
const FILLERS = new Set([
  'wire', 'of', 'long', 'length', 'gauge', 'diameter', 'dia', 'thick', 'no', 'and', 'a', 'x',
  // A unit that stands alone has lost its number, which is reported by itself.
  ...Object.keys(LENGTHS), ...DIAMETERS,
]);

const SEPARATORS = /(?:[\s,;/:()]|[-–—](?![\d.]))+/y;
const GAUGE = /(?:([sa]\.?w\.?g)(?!\p{L})\.?[\s:#-]*(?:no\.?\s*)?(\d+(?:\.\d+)?)|(\d+(?:\.\d+)?)\s*([sa]\.?w\.?g)(?!\p{L})\.?)/iuy;
const NUMBER = /([-−+]?(?:\d+(?:[.,]\d+)?|\.\d+))\s*((?:\p{L}[\p{L}\d]*)?)\.?/uy;
const WORD = /\p{L}[\p{L}\p{M}\d']*/uy;
const OTHER = /[^\s,;]+/y;

/** Cut the text into parts, from left to right. The words that are left over make up the name of the material. */
export function wireParts(text: string): WirePart[] {
  const source = text.normalize('NFKC');
  const parts: WirePart[] = [];
  const words: string[] = [];
  let at = 0;
  const take = (pattern: RegExp) => {
    pattern.lastIndex = at;
    const match = pattern.exec(source);
    if (match) at = pattern.lastIndex;
    return match;
  };
  while (at < source.length) {
    if (take(SEPARATORS)) continue;
    let match;
    if ((match = take(GAUGE))) parts.push(gaugePart(match[1] ?? match[4]!, match[2] ?? match[3]!));
    else if ((match = take(NUMBER))) parts.push(numberPart(match[0], match[1]!, match[2]!));
    else if ((match = take(WORD))) words.push(match[0]);
    else parts.push({ problem: `${quote(take(OTHER)![0])} is not part of a wire; leave it out` });
  }
  const material = words.filter((word) => !FILLERS.has(word.toLowerCase())).join(' ');
  return material === '' ? parts : [{ material }, ...parts];
}

function gaugePart(letters: string, number: string): WirePart {
  const system = letters.replaceAll('.', '').toUpperCase() === 'SWG' ? 'SWG' : 'AWG';
  return { gauge: { system, number: Number(number) } };
}

function numberPart(whole: string, digits: string, unit: string): WirePart {
  const written = plainDecimal(digits);
  const name = unit.toLowerCase();
  const perUnit = Object.hasOwn(LENGTHS, name) ? LENGTHS[name]! : undefined;
  if (perUnit === undefined && !DIAMETERS.includes(name)) return { problem: unknownUnit(whole, unit) };
  if (Number(written) <= 0) return { problem: `${written} ${unit} is not above zero; give the size of a real wire` };
  return perUnit === undefined ? { gauge: { mm: written } } : { cm: new Decimal(written).times(perUnit).toNumber() };
}

/** '+,50' is '0.50'. The digits after the point are kept. */
function plainDecimal(digits: string): string {
  const [, sign, integer, fraction = ''] = /^([-+]?)0*(\d*)(\.\d+)?$/.exec(digits.replace('−', '-').replace(',', '.'))!;
  return `${sign === '-' ? '-' : ''}${integer === '' ? '0' : integer}${fraction}`;
}

function unknownUnit(whole: string, unit: string): string {
  if (unit === '') {
    return `${whole.trim()} stands without a unit; write SWG or AWG before a gauge, mm after a diameter, cm or m after a length`;
  }
  return `${quote(whole)} has no unit that a wire is given in (${UNITS.join(', ')})${didYouMean(unit, UNITS)}`;
}
