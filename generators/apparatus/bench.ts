import { z } from 'zod';
import { quotient } from './decimal.ts';
import { decimalText, plainText, readTable, sourceText } from './table.ts';

/** Between two limits, low ≤ high; the two are equal where the apparatus is known. */
export type Range = readonly [low: number, high: number];

const any = z.number();
const fromZero = z.number().min(0);
const aboveZero = z.number().positive();

/** One number with its unit and source. */
const size = (unit: string, number = fromZero) =>
  z.strictObject({ value: number, unit: z.literal(unit), source: sourceText }).transform(({ value }) => value);

/** What differs from one apparatus to the next: `between: [low, high]`, or `value` where it is known. */
const range = (unit: string, number = fromZero) =>
  z
    .strictObject({
      value: number.optional(),
      between: z.tuple([number, number]).optional(),
      unit: z.literal(unit),
      source: sourceText,
    })
    .refine(({ value, between }) => (value === undefined) !== (between === undefined), 'give either value or between')
    .refine(({ between }) => between === undefined || between[0] <= between[1], 'the lower limit stands first')
    .transform(({ value, between }): Range => between ?? [value!, value!]);

const list = <T extends z.ZodType>(unit: string, item: T) =>
  z.strictObject({ values: z.array(item).min(1), unit: z.literal(unit), source: sourceText }).transform(({ values }) => values);

const division = (unit: string) =>
  z.strictObject({ value: plainText, unit: z.literal(unit), source: sourceText }).transform(({ value }) => value);

/** A check across fields waits until each field is right by itself. */
const unlessWrong = ({ issues }: { issues: readonly unknown[] }) => issues.length === 0;

/** Standard deviations of what a pair of hands does. */
const handsSchema = z.strictObject({ jockey: size('cm'), parallax: size('cm'), screwGauge: size('mm'), rule: size('cm') });

const benchSchema = z.strictObject({
  bridge: z.strictObject({
    wireLength: size('cm', aboveZero),
    wireResistance: range('Ω/cm', aboveZero),
    unevenness: size('1', z.number().min(0).max(0.5)),
    endCorrection: range('cm', any),
    scaleOffset: range('cm', any),
    scaleDivision: division('cm'),
    checkInset: size('cm'),
    joint: range('Ω'),
    jointsPerGap: size('1', z.number().int().min(0)),
    looseJoint: range('Ω'),
  }),
  cell: z.strictObject({ emf: range('V', aboveZero), internal: range('Ω') }),
  galvanometer: z.strictObject({
    coil: range('Ω', aboveZero),
    perDivision: range('A', aboveZero),
    divisions: size('1', z.number().int().positive()),
    leastSeen: size('division', aboveZero),
    protective: size('Ω'),
  }),
  box: z.strictObject({ plugs: list('Ω', plainText), tolerance: size('1'), plugContact: range('Ω') }),
  wire: z.strictObject({
    batchSpread: size('1'),
    diameterTolerance: size('1'),
    ovality: size('1', z.number().min(0).max(0.5)),
    cutting: size('cm'),
    leads: range('Ω'),
  }),
  screwGauge: z
    .strictObject({
      pitch: division('mm'),
      divisions: size('1', z.number().int().positive()),
      zeroErrors: list('mm', decimalText),
      limitOfError: size('mm'),
    })
    .refine(({ pitch, divisions }) => quotient(pitch, divisions) !== undefined, {
      error: 'pitch ÷ divisions must end in a few decimals',
      when: unlessWrong,
    })
    .refine(({ pitch, zeroErrors }) => zeroErrors.every((error) => Math.abs(Number(error)) < Number(pitch)), {
      error: 'a zero error must be smaller than the pitch',
      when: unlessWrong,
    }),
  rule: z.strictObject({ division: division('cm') }),
  thermometer: z.strictObject({ division: division('°C'), limitOfError: size('°C') }),
  bath: z.strictObject({ heated: range('°C', any), lag: size('°C') }),
  room: range('°C', any),
  hands: z.strictObject({ careful: handsSchema, usual: handsSchema, hurried: handsSchema }),
});

/** Every size of the apparatus, in the units named in its file. */
export type Bench = z.output<typeof benchSchema>;
/** How steadily the student works. */
export type Hands = keyof Bench['hands'];

/** The apparatus from content/tables/apparatus.yaml or a teacher's own file; UserMistake with every place that is wrong. */
export function readBench(table: unknown, file = 'apparatus.yaml'): Bench {
  return readTable(benchSchema, table, file);
}
