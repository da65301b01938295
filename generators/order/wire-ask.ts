import { Decimal } from 'decimal.js';
import { UserMistake } from '../mistake.ts';
import type { Written } from '../quantities/step.ts';
import type { KnownWires } from './known.ts';
import { didYouMean } from '../near-miss.ts';
import { quote } from './quote.ts';
import { wireParts, type WirePart } from './wire-parts.ts';

/** How thick a wire is: a number of a wire gauge, or a diameter in mm with the digits as given. */
export type Gauge = { system: 'SWG' | 'AWG'; number: number } | { mm: Written };

/** A wire that the teacher asks for. */
export interface WireAsk {
  /** A name from the table of materials. */
  material: string;
  gauge: Gauge;
  /** Length between the terminals, cm. */
  lengthCm: number;
}

/** Shortest and longest wire that a bench can hold, cm; common practice is 30 to 150 cm, no source. */
const LENGTH_CM = [5, 1000] as const;
/** Thinnest and thickest wire to be gauged by hand, mm; SWG 18 to 40 lie between (BS 3737). */
const DIAMETER_MM = [0.05, 3] as const;

/** A wire as it may be written, for messages. */
export const WIRE_EXAMPLE = 'constantan, SWG 28, 60 cm';

/**
 * Read a wire as a teacher writes it: 'constantan, SWG 28, 60 cm' or '0.8 m of manganin, 0.38 mm'.
 * Parts may stand in any order. Throws a UserMistake that lists all that is wrong.
 */
export function readWireAsk(text: string, known: KnownWires): WireAsk {
  const read = parseWireAsk(text, known);
  if ('problems' in read) throw new UserMistake(read.problems.map((what) => ({ what })));
  return read.ask;
}

/** The same as readWireAsk, with the problems returned, for callers that know the place. */
export function parseWireAsk(text: string, known: KnownWires): { ask: WireAsk } | { problems: string[] } {
  const parts = wireParts(text);
  const problems = parts.flatMap((part) => ('problem' in part ? [part.problem] : []));
  const material = only(text, 'material', of(parts, 'material'), problems);
  const gauge = only(text, 'thickness', of(parts, 'gauge'), problems);
  const length = only(text, 'length', of(parts, 'cm'), problems);
  // A part that could not be read is not called missing as well.
  if (problems.length === 0) problems.push(...missing(text, { material, thickness: gauge, length }));
  const name = material === undefined ? undefined : knownMaterial(material, known, problems);
  if (gauge) checkGauge(gauge, known, problems);
  if (length !== undefined) checkLength(length, problems);
  return name === undefined || !gauge || length === undefined || problems.length > 0
    ? { problems }
    : { ask: { material: name, gauge, lengthCm: length } };
}

/** The wire in the words that readWireAsk takes: 'constantan, SWG 28, 60 cm'. */
export function writeWireAsk({ material, gauge, lengthCm }: WireAsk): string {
  return `${material}, ${'mm' in gauge ? `${gauge.mm} mm` : `${gauge.system} ${gauge.number}`}, ${lengthCm} cm`;
}

function of<K extends 'material' | 'gauge' | 'cm'>(parts: WirePart[], key: K): Extract<WirePart, Record<K, unknown>>[K][] {
  return parts.flatMap((part) => (key in part ? [(part as Extract<WirePart, Record<K, unknown>>)[key]] : []));
}

function only<T>(text: string, part: string, found: T[], problems: string[]): T | undefined {
  if (found.length > 1) problems.push(`${quote(text)} gives more than one ${part}; give one wire, such as ${WIRE_EXAMPLE}`);
  return found[0];
}

function missing(text: string, parts: Record<string, unknown>): string[] {
  const absent = Object.keys(parts).filter((part) => parts[part] === undefined);
  return absent.length === 0
    ? []
    : [`${quote(text)} gives no ${absent.join(' and no ')}; write the whole wire, such as "${WIRE_EXAMPLE}"`];
}

const plain = (word: string) => word.toLowerCase().replace(/[\s-]/g, '');

function knownMaterial(word: string, known: KnownWires, problems: string[]): string | undefined {
  const name = known.materials.find((material) => plain(material) === plain(word));
  if (name === undefined) {
    const near = didYouMean(word, known.materials);
    problems.push(`no material ${quote(word)}${near || `; choose from ${known.materials.join(', ')}`}`);
  }
  return name;
}

function checkGauge(gauge: Gauge, known: KnownWires, problems: string[]): void {
  if ('mm' in gauge) {
    const [thin, thick] = DIAMETER_MM;
    if (Number(gauge.mm) < thin || Number(gauge.mm) > thick) {
      problems.push(`a diameter of ${gauge.mm} mm is out of reach; give one from ${thin} to ${thick} mm`);
    }
    if (!/^\d+(\.\d{1,4})?$/.test(gauge.mm)) problems.push(`${gauge.mm} mm is finer than a wire is measured; give four decimals at most`);
    return;
  }
  const table = known.gauges[gauge.system];
  if (!table.includes(gauge.number)) {
    const range = table.length === 0 ? '' : `, which goes from ${Math.min(...table)} to ${Math.max(...table)}`;
    problems.push(`${gauge.system} ${gauge.number} is not in the table${range}; give another gauge or the diameter in mm`);
  }
}

function checkLength(cm: number, problems: string[]): void {
  const [short, long] = LENGTH_CM;
  const mm = new Decimal(cm).times(10);
  if (!mm.isInteger()) problems.push(`a length of ${cm} cm is finer than a metre rule reads; give it to 0.1 cm`);
  if (cm < short || cm > long) {
    problems.push(`a length of ${cm} cm is out of reach; give one from ${short} to ${long} cm`);
  }
}
