import { z } from 'zod';
import { DRAWABLE } from '../experiments/drawings.ts';
import { choice, entries, number, oneOf, stretch, text, wholeNumber, YES_OR_NO, yesOrNo } from './fields.ts';
import { asChoice, asList, asNumber, asOneOrMore, asPercent } from './from-text.ts';
import type { Known } from './known.ts';
import { SECTIONS, sectionsField, SECTION_WORDS } from './sections.ts';
import { WIRE_EXAMPLE } from './wire-ask.ts';
import { wireField } from './wire-field.ts';

/** Plugs in tenths of an ohm up to 41 Ω, enough for several balance points near mid-wire; common practice, no source. */
const PLUGS = '0.1 0.2 0.2 0.5 1 2 2 5 10 20';

const PLUG = z.number().min(0.01).max(10_000);

/** The experiment that everyone does. */
export const FIRST = 'resistivity';

/** Words that settle an entry by themselves. */
const GAPS = ['left', 'right'] as const;
const HANDS = ['careful', 'usual', 'hurried'] as const;
const READINGS = ['printed', 'blank'] as const;
const PAPERS = ['A4', 'Letter'] as const;
const SIZES = ['normal', '18pt', '24pt'] as const;
const SYMBOLS = ['IEC', 'zigzag'] as const;
/** Signs between a number's whole part and the rest. */
export const DECIMALS = ['point', 'comma'] as const;
const TIES = ['even', 'up'] as const;

/**
 * What a teacher can ask for, one field an entry of the order file. It checks the order, and the flags and the
 * documentation are listed from it. Every field takes text, as the file and the flags give it, or the ready value,
 * as a finished order holds it.
 */
export function orderSchema(known: Known) {
  return z.strictObject({
    title: text(120).prefault('').register(entries, {
      takes: 'a line of up to 120 letters',
      meaning: 'heading of every sheet; the name of the experiment where it is left out',
    }),
    experiment: choice(known.experiments).prefault(FIRST).register(entries, {
      takes: 'the id of an experiment, see slidewire experiments',
      words: known.experiments,
      meaning: 'the experiment; it has defaults of its own, which slidewire experiments tells',
    }),
    class: text(1000, 1).optional().register(entries, {
      takes: 'the path of a CSV file with the columns roll and name',
      meaning: 'the class list; a path in an order file starts from the folder of that file',
    }),
    wires: z.preprocess(asOneOrMore, z.array(wireField(known)).min(1).max(100)).register(entries, {
      takes: `from 1 to 100 wires such as "${WIRE_EXAMPLE}"`,
      meaning: 'wires on the benches, dealt out among the students',
      flag: 'wire',
      many: true,
      without: 'wires that suit the experiment',
    }),
    box: z.preprocess(asList(asNumber), z.array(PLUG).min(1).max(60)).prefault(PLUGS).register(entries, {
      takes: 'plug values in ohms such as "0.5 1 2 2 5", each from 0.01 to 10000',
      meaning: 'plugs of the resistance box, in ohms',
    }),
    gap: choice(GAPS).prefault('left').register(entries, {
      ...oneOf(GAPS),
      meaning: 'the gap that holds the resistance box',
    }),
    rows: wholeNumber(3, 6).prefault('4').register(entries, {
      takes: 'a whole number from 3 to 6',
      meaning: 'rows of the bridge table',
    }),
    window: stretch(5, 95, 5).prefault('40-60').register(entries, {
      takes: 'two lengths in cm such as 40-60, between 5 and 95 and at least 5 apart',
      meaning: 'the part of the bridge wire where balance points are wanted, in cm',
    }),
    hands: choice(HANDS).prefault('usual').register(entries, {
      ...oneOf(HANDS),
      meaning: 'how far the readings scatter',
    }),
    sections: sectionsField.prefault('record').register(entries, {
      takes: `practice (one page), record (all), or a list of ${SECTIONS.join(', ')}`,
      meaning: 'sections of a sheet; the cautions are always printed',
      words: SECTION_WORDS,
    }),
    readings: choice(READINGS).prefault('printed').register(entries, {
      ...oneOf(READINGS),
      meaning: 'whether the readings are printed, or left for the student to take',
    }),
    drawn: z.preprocess(asList(asChoice(DRAWABLE)), z.array(z.enum(DRAWABLE))).prefault('').register(entries, {
      takes: `a list of ${DRAWABLE.join(', ')}`,
      meaning: 'instruments that are drawn to be read, in place of printed readings',
      words: DRAWABLE,
    }),
    latitude: latitude().prefault({}).register(entries, {
      takes: 'the entries l, n and L, indented below it',
      meaning: 'how far a reading taken off a drawing may lie from the truth',
    }),
    paper: choice(PAPERS).prefault('A4').register(entries, {
      ...oneOf(PAPERS),
      meaning: 'size of the paper',
    }),
    size: choice(SIZES).prefault('normal').register(entries, {
      ...oneOf(SIZES),
      meaning: 'size of the print',
    }),
    symbols: choice(SYMBOLS).prefault('IEC').register(entries, {
      ...oneOf(SYMBOLS),
      meaning: 'symbol of a resistor in circuit diagrams',
    }),
    rounding: choice(TIES).prefault('even').register(entries, {
      ...oneOf(TIES),
      meaning: 'where a tie goes in rounding: 2.65 to 2.6 (even) or to 2.7 (up)',
    }),
    tables: yesOrNo().prefault('no').register(entries, {
      ...YES_OR_NO,
      meaning: 'whether four-figure tables may be used, so that their rounding is accepted',
    }),
    decimal: choice(DECIMALS).prefault('point').register(entries, {
      ...oneOf(DECIMALS),
      meaning: 'the decimal sign in all that is printed and in what is marked',
    }),
    reasons: yesOrNo().prefault('no').register(entries, {
      ...YES_OR_NO,
      meaning: 'whether key and marking grid say what leads to the ends of each range to accept, which makes them longer',
    }),
    limits: limits().prefault({}).register(entries, {
      takes: 'the entries l and R, indented below it',
      meaning: 'maximum permissible errors of the readings',
    }),
    resistivity: choice(known.sources).prefault(known.sources[0] ?? '').register(entries, {
      ...oneOf(known.sources),
      meaning: 'source of the accepted resistivities; printed on the sheet',
    }),
    'double-sided': yesOrNo().prefault('no').register(entries, {
      ...YES_OR_NO,
      meaning: 'whether each student starts on an odd page',
    }),
    singles: yesOrNo().prefault('yes').register(entries, {
      ...YES_OR_NO,
      meaning: 'whether each worksheet and key is also printed by itself, which takes longer; always where the print is double-sided',
    }),
    language: choice(known.languages).prefault(known.languages[0] ?? '').register(entries, {
      ...oneOf(known.languages),
      meaning: 'language of the sheets',
    }),
    seed: text(100, 1).optional().register(entries, {
      takes: 'a word or a number of up to 100 letters',
      meaning: 'makes a practice pack, which anyone who knows the seed can make again with its keys; '
        + 'without a seed the pack is assessed and secret',
    }),
  });
}

function limits() {
  return z.strictObject({
    l: number(0.01, 2).prefault('0.1').register(entries, {
      takes: 'centimetres from 0.01 to 2',
      meaning: 'maximum permissible error of a balance length, in cm',
      flag: 'limit-l',
    }),
    R: z.preprocess(asPercent, z.number().min(0).max(10)).prefault('0').register(entries, {
      takes: 'the class of the box from 0 to 10, in per cent of R',
      meaning: 'maximum permissible error of the resistance box, in per cent of R',
      flag: 'limit-r',
    }),
  });
}

function latitude() {
  return z.strictObject({
    l: number(0, 1).prefault('0.1').register(entries, {
      takes: 'centimetres from 0 to 1',
      meaning: 'latitude of a balance length read off a drawing, in cm',
      flag: 'latitude-null',
    }),
    n: number(0, 5).prefault('1').register(entries, {
      takes: 'divisions from 0 to 5',
      meaning: 'latitude of a circular-scale reading taken off a drawing, in divisions',
      flag: 'latitude-gauge',
    }),
    L: number(0, 1).prefault('0.1').register(entries, {
      takes: 'centimetres from 0 to 1',
      meaning: 'latitude of a length read off a drawn rule, in cm',
      flag: 'latitude-length',
    }),
  });
}

/** What a teacher asks for, checked and complete. It survives JSON, and reads again as itself. */
export type Order = z.output<ReturnType<typeof orderSchema>>;
