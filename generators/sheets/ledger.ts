import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { z } from 'zod';
import { type Mistake, UserMistake } from '../mistake.ts';
import { allMistakes } from '../order/all-mistakes.ts';
import type { Order } from '../order/schema.ts';
import type { Issue, Recipient } from './issue.ts';
import { sealOf } from './seal.ts';

const written = z.string().describe('a decimal number as printed, digits kept');
const limit = z.union([z.strictObject({ absolute: z.number() }), z.strictObject({ fraction: z.number() })]);
const fromOne = z.number().int().min(1);
const seal = z.string().describe('keyed hash of the entries beside it, by which a change by hand is noticed');

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
  finished: z.record(z.string(), z.array(written)).optional().describe('what an imaginary student wrote, mistakes and all, where the sheet is a record to be corrected'),
});

const issueSchema = z.strictObject({
  roll: z.string(),
  name: z.string(),
  sitting: fromOne.describe("1 for the class's own sheets, more for a student's further sets"),
  code: z.string().describe('the sheet code printed on the worksheet'),
  attempt: z.number().int().describe('how often the set was drawn again before it stood apart from earlier ones'),
  wires: z.array(z.string()).min(1).describe("the student's wires, each as an order writes it"),
  shared: z
    .array(z.strictObject({ roll: z.string(), id: z.string(), row: z.number().int() }))
    .describe('right answers that the sheet of that roll would accept too; sheets of one material share its resistivity besides'),
  sheet: sheetSchema,
  truth: z.record(z.string(), z.number()).describe('true values of the simulation'),
  seal,
});

const ledgerSchema = z.strictObject({
  format: z.literal(1),
  kind: z.enum(['assessed', 'practice']).describe('a practice pack has a chosen seed: whoever knows it can make the keys'),
  secret: z.string().describe('128 random bits in hex, or the chosen seed; keep it to yourself'),
  orderDigest: z.string().describe('SHA-256 of the order and the class list, in hex'),
  order: z.unknown().describe('the order, complete'),
  part: z
    .strictObject({ number: fromOne, of: fromOne, students: fromOne.describe('of the whole class') })
    .optional()
    .describe('which part of the class the issues are, where a pack is made in parts'),
  seal,
  issues: z.array(issueSchema).describe('every sheet that was issued; new ones are added at the end'),
});

/** What was issued to whom, for the teacher alone. A pack is made again from it. */
export type Ledger = z.output<typeof ledgerSchema>;

/** The ledger of these sheets. */
export function makeLedger({ kind, secret, orderDigest, order, part }: Omit<Ledger, 'format' | 'seal' | 'issues'>, issues: readonly Issue[]): Ledger {
  const head = { format: 1 as const, kind, secret, orderDigest, order, ...(part && { part }) };
  return { ...head, seal: sealOf(secret, head), issues: issues.map((issue) => sealed(secret, issue)) };
}

/** The ledger with more sheets at its end; what stands in it stays. */
export function addIssues(ledger: Ledger, issues: readonly Issue[]): Ledger {
  return { ...ledger, issues: [...ledger.issues, ...issues.map((issue) => sealed(ledger.secret, issue))] };
}

function sealed(secret: string, issue: Issue): Ledger['issues'][number] {
  return { ...issue, seal: sealOf(secret, issue) };
}

/** The schema of ledger.json as JSON Schema, for other programs. */
export function ledgerJsonSchema(): unknown {
  return z.toJSONSchema(ledgerSchema, { target: 'draft-2020-12' });
}

/** A ledger as its file holds it. */
export function ledgerText(ledger: Ledger): string {
  return `${JSON.stringify(ledger, null, 1)}\n`;
}

/**
 * Reads what `ledgerText` wrote.
 * @throws UserMistake that names the file and the field where the text is no ledger, or was changed since
 */
export function readLedger(text: string, file = 'ledger.json'): Ledger {
  const values = fromJson(text, file);
  const { error } = ledgerSchema.safeParse(values);
  if (error) throw allMistakes(error.issues.map(({ path, message }) => ({ file, ...inField(path), what: `this is no ledger as Slidewire writes it (${message}); ${BACKUP}` })));
  // The values as they stand and not as zod orders them, so that writing them again changes no byte.
  const ledger = values as Ledger;
  const mistakes = changes(ledger);
  if (mistakes.length > 0) throw allMistakes(mistakes.map((mistake) => ({ file, ...mistake })));
  return ledger;
}

const BACKUP = 'put a copy of it back that nobody has changed';

function fromJson(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new UserMistake([{ file, what: `this is no ledger, or not a whole one (${(cause as SyntaxError).message}); ${BACKUP}` }], { cause });
  }
}

function inField(path: readonly PropertyKey[]): { field?: string } {
  const field = path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('');
  return field === '' ? {} : { field: field.slice(1) };
}

/** What was changed since the ledger was written. Under another secret no seal fits, which is said once. */
function changes({ issues, ...head }: Ledger): Mistake[] {
  if (head.seal !== sealOf(head.secret, head)) {
    return [{ field: 'seal', what: `does not fit ${Object.keys(head).filter((key) => key !== 'seal').join(', ')}: one of them was changed; ${BACKUP}` }];
  }
  const broken = issues.flatMap((issue, i) =>
    issue.seal === sealOf(head.secret, issue) ? [] : [{ field: `issues[${i}]`, what: `the entry of roll ${issue.roll} was changed after it was issued; ${BACKUP}` }],
  );
  return [...broken, ...doubles(issues)];
}

/** Entries that issue the same sitting of the same roll again. */
export function doubles(issues: readonly Pick<Issue, 'roll' | 'sitting'>[]): Mistake[] {
  const seen = new Set<string>();
  return issues.flatMap(({ roll, sitting }, i) => {
    const key = JSON.stringify([roll, sitting]);
    if (seen.has(key)) return [{ field: `issues[${i}]`, what: `roll ${roll} appears twice with sitting ${sitting}; ${BACKUP}` }];
    seen.add(key);
    return [];
  });
}

/** The same order and class always give the same digest, wherever the class list lies. */
export function orderDigest({ class: _, ...order }: Order, recipients: readonly Recipient[]): string {
  const students = recipients.map(({ roll, name, wire }) => ({ roll, name, wire }));
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify([order, students]))));
}
