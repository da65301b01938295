import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { type Ledger, ledgerJsonSchema, orderDigest, readLedger } from '../../generators/sheets/ledger.ts';
import { issuesOf, orderOf, SECRET, STUDENTS } from './class.ts';

const order = orderOf();
const ledger: Ledger = { format: 1, kind: 'assessed', secret: SECRET, orderDigest: orderDigest(order, STUDENTS), order, issues: issuesOf(order) };
const text = JSON.stringify(ledger);

/** What another program would make of ledger.schema.json: read from JSON, with no knowledge of this one. */
const published = z.fromJSONSchema(JSON.parse(JSON.stringify(ledgerJsonSchema())) as Parameters<typeof z.fromJSONSchema>[0]);

/** The ledger with one thing changed. */
function changed(change: (ledger: { [key: string]: any }) => void): unknown {
  const copy = JSON.parse(text) as { [key: string]: any };
  change(copy);
  return copy;
}

describe('a ledger', () => {
  test('reads again as itself', () => {
    expect(readLedger(text)).toStrictEqual(JSON.parse(text));
    expect(readLedger(text)).toEqual(ledger);
  });

  test('fits the schema that is handed out with it', () => {
    expect(published.safeParse(JSON.parse(text))).toMatchObject({ success: true });
  });

  test.each([
    ['another format', (it: any) => (it.format = 2)],
    ['no secret', (it: any) => delete it.secret],
    ['an unknown kind', (it: any) => (it.kind = 'exam')],
    ['an entry too many', (it: any) => (it.more = 1)],
    ['a sheet without readings', (it: any) => delete it.issues[0].sheet.readings],
    ['a reading that is a number', (it: any) => (it.issues[0].sheet.readings.L = 60)],
    ['a truth that is text', (it: any) => (it.issues[1].truth.X = '2.6')],
    ['an attempt that is no whole number', (it: any) => (it.issues[1].attempt = 0.5)],
    ['a limit that is neither absolute nor a fraction', (it: any) => (it.issues[0].sheet.conventions.limits.l = {})],
  ])('with %s is none, by either schema', (_, change) => {
    const wrong = changed(change);
    expect(readLedger(JSON.stringify(wrong))).toBeUndefined();
    expect(published.safeParse(wrong).success).toBe(false);
  });

  test.each(['', '{', 'null', '[]', text.slice(0, -1)])('is not read from other text', (other) => {
    expect(readLedger(other)).toBeUndefined();
  });
});

describe('the digest of an order', () => {
  const digest = orderDigest(order, STUDENTS);

  test('is the same for the same order and class, also after JSON', () => {
    expect(orderDigest(JSON.parse(JSON.stringify(order)) as typeof order, [...STUDENTS])).toBe(digest);
    expect(digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test('changes with any entry, and with a student, a name or the order of the class', () => {
    const others = [
      orderDigest({ ...order, rows: 5 }, STUDENTS),
      orderDigest({ ...order, paper: 'Letter' }, STUDENTS),
      orderDigest(order, STUDENTS.slice(1)),
      orderDigest(order, [...STUDENTS].reverse()),
      orderDigest(order, STUDENTS.map((student) => ({ ...student, name: 'N. N.' }))),
    ];
    expect(new Set([digest, ...others]).size).toBe(6);
  });
});
