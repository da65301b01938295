import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { z } from 'zod';
import type { Order } from '../order/schema.ts';

const written = z.string().describe('a decimal number as printed, digits kept');
const limit = z.union([z.strictObject({ absolute: z.number() }), z.strictObject({ fraction: z.number() })]);

const sheetSchema = z.strictObject({
  format: z.literal(1),
  edition: z.number().int().describe('edition of the experiment that made the readings'),
  experiment: z.string(),
  origin: z.enum(['generated', 'measured']),
  form: z.record(z.string(), z.string()).describe('choices that decide which steps stand'),
  readings: z.record(z.string(), z.union([written, z.array(written)])),
  conventions: z.strictObject({
    ties: z.enum(['even', 'up']),
    tables: z.boolean(),
    drawn: z.record(z.string(), z.number()),
    limits: z.record(z.string(), limit),
    halfWidths: z.record(z.string(), limit),
  }),
});

const issueSchema = z.strictObject({
  roll: z.string(),
  name: z.string(),
  code: z.string().describe('the sheet code printed on the worksheet'),
  attempt: z.number().int().describe('how often the set was drawn again before it stood apart from earlier ones'),
  wire: z.string().describe('the wire, as an order writes it'),
  shared: z
    .array(z.strictObject({ roll: z.string(), id: z.string(), row: z.number().int() }))
    .describe('right answers that the sheet of that roll would accept too'),
  sheet: sheetSchema,
  truth: z.record(z.string(), z.number()).describe('true values of the simulation'),
});

const ledgerSchema = z.strictObject({
  format: z.literal(1),
  kind: z.enum(['assessed', 'practice']).describe('a practice pack has a chosen seed: whoever knows it can make the keys'),
  secret: z.string().describe('128 random bits in hex, or the chosen seed; keep it to yourself'),
  orderDigest: z.string().describe('SHA-256 of the order and the class list, in hex'),
  order: z.unknown().describe('the order, complete'),
  issues: z.array(issueSchema).describe('every sheet that was issued; new ones are added at the end'),
});

/** What was issued to whom, for the teacher alone. A pack is made again from it. */
export type Ledger = z.output<typeof ledgerSchema>;

/** The schema of ledger.json as JSON Schema, for other programs. */
export function ledgerJsonSchema(): unknown {
  return z.toJSONSchema(ledgerSchema, { target: 'draft-2020-12' });
}

/** Reads a ledger; undefined where the text is none. */
export function readLedger(text: string): Ledger | undefined {
  try {
    return ledgerSchema.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}

/** The same order and class always give the same digest. */
export function orderDigest(order: Order, recipients: readonly unknown[]): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify([order, recipients]))));
}
