import { z } from 'zod';
import type { Known } from './known.ts';
import { asChoice, asFlag, asList, asNumber, asPercent, asRange, asText } from './from-text.ts';
import { quote } from './quote.ts';
import { parseWireAsk, writeWireAsk, type WireAsk } from './wire-ask.ts';

/** What a user is told about one entry of the order. */
export interface Entry {
  /** What may be written, as it fits after 'rows takes': 'a whole number from 3 to 6'. */
  takes: string;
  /** What it does. */
  meaning: string;
  /** The command-line flag, where it is not the entry's own name. */
  flag?: string;
  /** The flag may be given several times. */
  many?: true;
  /** Words to offer where a word is mistyped. */
  words?: readonly string[];
}

/** The entry that belongs to each field of the schema. */
export const entries = z.registry<Entry>();

/** Sections of a sheet, in the order in which they are printed. */
export const SECTIONS = [
  'aim', 'apparatus', 'circuit', 'formula', 'check', 'procedure', 'observations',
  'working', 'result', 'precautions', 'errors', 'viva', 'cautions',
] as const;
export type Section = (typeof SECTIONS)[number];

/** Words that stand for a set of sections. */
const SECTION_SETS: Record<'practice' | 'record', readonly Section[]> = {
  practice: ['formula', 'observations', 'working', 'result', 'cautions'],
  record: SECTIONS,
};

/** Plugs of a box in tenths of an ohm up to 41 Ω, enough for three rows at mid-wire; common practice, no source. */
const PLUGS = '0.1 0.2 0.2 0.5 1 2 2 5 10 20';

/**
 * What a teacher can ask for, one field an entry of the order file. It checks the order, and the flags and the
 * documentation are listed from it. Every field takes text, as the file and the flags give it, or the ready value,
 * as a finished order holds it.
 */
export function orderSchema(known: Known) {
  return z.strictObject({
    title: text(120).prefault('').register(entries, {
      takes: 'a line of up to 120 letters', meaning: 'heading of every sheet; the name of the experiment where it is left out' }),
    experiment: choice(known.experiments).prefault('resistivity').register(entries, {
      ...oneOf(known.experiments), meaning: 'the experiment' }),
    class: text(1000, 1).optional().register(entries, {
      takes: 'the path of a CSV file with the columns roll and name', meaning: 'the class list; a path in an order file starts from that file' }),
    wires: z.preprocess(single, z.array(wireIn(known)).min(1).max(100)).register(entries, {
      takes: 'wires such as "constantan, SWG 28, 60 cm", at most 100', meaning: 'wires on the benches, dealt out among the students', flag: 'wire', many: true }),
    box: z.preprocess(asList(asNumber), z.array(z.number().min(0.01).max(10_000)).min(1).max(60)).prefault(PLUGS).register(entries, {
      takes: 'plug values in ohms such as "0.5 1 2 2 5", each from 0.01 to 10000', meaning: 'plugs of the resistance box, in ohms' }),
    gap: choice(['left', 'right']).prefault('left').register(entries, {
      ...oneOf(['left', 'right']), meaning: 'the gap that holds the resistance box' }),
    rows: number(3, 6, 'whole').prefault('4').register(entries, {
      takes: 'a whole number from 3 to 6', meaning: 'rows of the bridge table' }),
    window: z.preprocess(asRange, z.tuple([z.number(), z.number()]).refine(isWindow)).prefault('40-60').register(entries, {
      takes: 'two lengths in cm such as 40-60, between 5 and 95 and at least 5 apart', meaning: 'the part of the wire on which balance points are wanted, in cm' }),
    hands: choice(['careful', 'usual', 'hurried']).prefault('usual').register(entries, {
      ...oneOf(['careful', 'usual', 'hurried']), meaning: 'how far readings scatter' }),
    sections: z.preprocess(sectionsFromText, z.array(z.enum(SECTIONS)).min(1)).transform(inPrintedOrder).prefault('record').register(entries, {
      takes: `practice (one page), record (all), or a list of ${SECTIONS.join(', ')}`, meaning: 'sections of a sheet; the cautions are always printed', words: [...SECTIONS, 'practice', 'record'] }),
    readings: choice(['printed', 'blank']).prefault('printed').register(entries, {
      ...oneOf(['printed', 'blank']), meaning: 'whether the readings are printed, or left for the student to take' }),
    paper: choice(['A4', 'Letter']).prefault('A4').register(entries, {
      ...oneOf(['A4', 'Letter']), meaning: 'size of the paper' }),
    size: choice(['normal', '18pt', '24pt']).prefault('normal').register(entries, {
      ...oneOf(['normal', '18pt', '24pt']), meaning: 'size of the print' }),
    symbols: choice(['IEC', 'zigzag']).prefault('IEC').register(entries, {
      ...oneOf(['IEC', 'zigzag']), meaning: 'symbol of a resistor in circuit diagrams' }),
    rounding: choice(['even', 'up']).prefault('even').register(entries, {
      ...oneOf(['even', 'up']), meaning: 'where a tie goes in rounding: 2.65 to 2.6 (even) or to 2.7 (up)' }),
    tables: z.preprocess(asFlag, z.boolean()).prefault('no').register(entries, {
      takes: 'yes or no', meaning: 'whether four-figure tables may be used, so that their rounding is accepted', words: ['yes', 'no'] }),
    limits: z.strictObject({
      l: number(0.01, 2).prefault('0.1').register(entries, {
        takes: 'centimetres from 0.01 to 2', meaning: 'maximum permissible error of a balance length, in cm', flag: 'limit-l' }),
      R: z.preprocess(asPercent, z.number().min(0).max(10)).prefault('0').register(entries, {
        takes: 'the class of the box from 0 to 10, in per cent of R', meaning: 'maximum permissible error of the resistance box, in per cent of R', flag: 'limit-r' }),
    }).prefault({}).register(entries, {
      takes: 'the entries l and R, indented below it', meaning: 'maximum permissible errors of the readings' }),
    resistivity: choice(known.sources).prefault(known.sources[0] ?? '').register(entries, {
      ...oneOf(known.sources), meaning: 'source of the accepted resistivities; printed on the sheet' }),
    'double-sided': z.preprocess(asFlag, z.boolean()).prefault('no').register(entries, {
      takes: 'yes or no', meaning: 'whether each student starts on an odd page', words: ['yes', 'no'] }),
    language: choice(known.languages).prefault(known.languages[0] ?? '').register(entries, {
      ...oneOf(known.languages), meaning: 'language of the sheets' }),
    seed: text(100, 1).optional().register(entries, {
      takes: 'a word or a number', meaning: 'makes a practice pack, which anyone who knows the seed can make again with its keys; without a seed the pack is assessed and secret' }),
  });
}

/** What a teacher asks for, checked and complete. It survives JSON, and reads again as itself. */
export type Order = z.output<ReturnType<typeof orderSchema>>;

function text(most: number, least = 0) {
  return z.preprocess(asText, z.string().min(least).refine((value) => [...value].length <= most && !/\p{Cc}/u.test(value)));
}

function number(low: number, high: number, whole?: 'whole') {
  const range = z.number().min(low).max(high);
  return z.preprocess(asNumber, whole ? range.int() : range);
}

function choice<const Word extends string>(words: readonly Word[]) {
  return z.preprocess(asChoice(words), z.enum(words as readonly [Word, ...Word[]]));
}

function oneOf(words: readonly string[]): Pick<Entry, 'takes' | 'words'> {
  return { takes: words.length === 1 ? `the word ${words[0]}` : `one of the words ${words.join(', ')}`, words };
}

function single(value: unknown): unknown {
  return typeof value === 'string' ? [value] : value;
}

function isWindow([low, high]: [number, number]): boolean {
  return low >= 5 && high <= 95 && high - low >= 5;
}

const sectionList = asList(asChoice([...SECTIONS, 'practice', 'record']));

function sectionsFromText(value: unknown): unknown {
  const list = sectionList(value);
  if (!Array.isArray(list) || list.length !== 1) return list;
  const [word]: unknown[] = list;
  return word === 'practice' || word === 'record' ? SECTION_SETS[word] : list;
}

/** A sheet never goes out without the cautions. */
function inPrintedOrder(asked: Section[]): Section[] {
  return SECTIONS.filter((section) => section === 'cautions' || asked.includes(section));
}

function wireIn(known: Known) {
  return z.unknown().transform((value, context): WireAsk => {
    const words = typeof value === 'string' ? value : rewritten(value);
    const read = words === undefined ? { problems: [`${quote(value)} is not a wire; write it on one line, such as "constantan, SWG 28, 60 cm"`] } : parseWireAsk(words, known);
    if ('ask' in read) return read.ask;
    for (const message of read.problems) context.issues.push({ code: 'custom', message, input: value });
    return z.NEVER;
  });
}

/** A wire of a finished order, in the words that are read again. */
function rewritten(value: unknown): string | undefined {
  const wire = finishedWire.safeParse(value);
  return wire.success ? writeWireAsk(wire.data) : undefined;
}

const finishedWire = z.strictObject({
  material: z.string(),
  gauge: z.union([z.strictObject({ system: z.enum(['SWG', 'AWG']), number: z.number() }), z.strictObject({ mm: z.string() })]),
  lengthCm: z.number(),
});
