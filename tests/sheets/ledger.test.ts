import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { UserMistake } from '../../generators/mistake.ts';
import { addIssues, ledgerJsonSchema, ledgerText, makeLedger, orderDigest, readLedger } from '../../generators/sheets/ledger.ts';
import { issuesOf, orderOf, SECRET, STUDENTS } from './class.ts';

const order = orderOf();
const ledger = makeLedger({ kind: 'assessed', secret: SECRET, orderDigest: orderDigest(order, STUDENTS), order }, issuesOf(order));
const text = ledgerText(ledger);

/** What another program would make of ledger.schema.json: read from JSON, with no knowledge of this one. */
const published = z.fromJSONSchema(JSON.parse(JSON.stringify(ledgerJsonSchema())) as Parameters<typeof z.fromJSONSchema>[0]);

/** The ledger with one thing changed. */
function changed(change: (ledger: { [key: string]: any }) => void): unknown {
  const copy = JSON.parse(text) as { [key: string]: any };
  change(copy);
  return copy;
}

/** What is said of a text that should be a ledger. */
function said(text: string): string {
  try {
    readLedger(text, 'pack/teacher/ledger.json');
  } catch (error) {
    if (error instanceof UserMistake) return error.message;
    throw error;
  }
  return '';
}

describe('a ledger', () => {
  test('reads again as itself, and is written again byte for byte', () => {
    expect(readLedger(text)).toEqual(ledger);
    expect(ledgerText(readLedger(text))).toBe(text);
  });

  test('fits the schema that is handed out with it', () => {
    expect(published.safeParse(JSON.parse(text))).toMatchObject({ success: true });
  });

  test('reads from a text whose keys another program put in another order', () => {
    const { issues, ...head } = ledger;
    const turned = (object: object) => Object.fromEntries(Object.entries(object).reverse());
    expect(said(JSON.stringify(turned({ ...turned(head), issues: issues.map(turned) })))).toBe('');
  });

  test.each([
    ['another format', 'format', (it: any) => (it.format = 2)],
    ['no secret', 'secret', (it: any) => delete it.secret],
    ['an unknown kind', 'kind', (it: any) => (it.kind = 'exam')],
    ['a sheet without readings', 'issues[0].sheet.readings', (it: any) => delete it.issues[0].sheet.readings],
    ['a reading that is a number', 'issues[0].sheet.readings.L', (it: any) => (it.issues[0].sheet.readings.L = 60)],
    ['a truth that is text', 'issues[1].truth.X', (it: any) => (it.issues[1].truth.X = '2.6')],
    ['an attempt that is no whole number', 'issues[1].attempt', (it: any) => (it.issues[1].attempt = 0.5)],
    ['a sitting before the first', 'issues[2].sitting', (it: any) => (it.issues[2].sitting = 0)],
    ['a limit that is neither absolute nor a fraction', 'issues[0].sheet.conventions.limits.l', (it: any) => (it.issues[0].sheet.conventions.limits.l = {})],
  ])('with %s is none, by either schema, and the message names the file and the field', (_, field, change) => {
    const wrong = changed(change);
    expect(said(JSON.stringify(wrong))).toMatch(new RegExp(`^pack/teacher/ledger\\.json, ${field.replace(/[[\].]/g, '\\$&')}: this is no ledger as Slidewire writes it .*; put a copy of it back that nobody has changed$`));
    expect(published.safeParse(wrong).success).toBe(false);
  });

  test('with an entry too many is none', () => {
    const wrong = changed((it) => (it['more'] = 1));
    expect(said(JSON.stringify(wrong))).toContain('Unrecognized key: "more"');
    expect(published.safeParse(wrong).success).toBe(false);
  });

  test.each(['', '{', text.slice(0, -3)])('is not read from half a text', (other) => {
    expect(said(other)).toMatch(/^pack\/teacher\/ledger\.json: this is no ledger, or not a whole one \(.+\); put a copy/);
  });

  test.each(['null', '[]', '7'])('is not read from %s', (other) => {
    expect(said(other)).toMatch(/^pack\/teacher\/ledger\.json: this is no ledger as Slidewire writes it/);
  });

  test.each([
    ['the secret', 'seal', (it: any) => (it.secret = `${SECRET}0`)],
    ['the kind', 'seal', (it: any) => (it.kind = 'practice')],
    ['an entry of the order', 'seal', (it: any) => (it.order.rows = 6)],
    ['the digest', 'seal', (it: any) => (it.orderDigest = '0'.repeat(64))],
    ['a reading', 'issues[1]', (it: any) => (it.issues[1].sheet.readings.L += '1')],
    ['a truth', 'issues[0]', (it: any) => (it.issues[0].truth.X += 1e-9)],
    ['a name', 'issues[2]', (it: any) => (it.issues[2].name = 'N. N.')],
    ['a code', 'issues[2]', (it: any) => (it.issues[2].code = 'AAAA-AAAA')],
  ])('in which %s was changed is refused, by file and entry', (_, field, change) => {
    expect(said(JSON.stringify(changed(change)))).toMatch(new RegExp(`^pack/teacher/ledger\\.json, ${field.replace(/[[\]]/g, '\\$&')}: .*changed.*; put a copy of it back that nobody has changed$`));
  });

  test('that issues a sheet twice is refused', () => {
    expect(said(JSON.stringify(changed((it) => it['issues'].push(it['issues'][0]))))).toContain('issues[3]: roll Q17-88 appears twice with sitting 1');
  });

  test('grows at its end alone', () => {
    const [issue] = issuesOf(order, [{ ...STUDENTS[1]!, sitting: 2 }]);
    const grown = ledgerText(addIssues(readLedger(text), [issue!]));
    const end = '\n ]\n}\n';
    expect(text.endsWith(end)).toBe(true);
    expect(grown.startsWith(text.slice(0, -end.length))).toBe(true);
    expect(readLedger(grown).issues.at(-1)).toMatchObject({ roll: 'Q23-41', sitting: 2 });
  });
});

describe('the digest of an order', () => {
  const digest = orderDigest(order, STUDENTS);

  test('is the same for the same order and class, also after JSON', () => {
    expect(orderDigest(JSON.parse(JSON.stringify(order)) as typeof order, [...STUDENTS])).toBe(digest);
    expect(digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test('does not ask where the class list lies, nor in which rows it holds its students', () => {
    expect(orderDigest({ ...order, class: 'elsewhere/class.csv' }, STUDENTS.map((student, row) => ({ ...student, row: row + 3 })))).toBe(digest);
  });

  test('changes with any entry, and with a student, a name or the order of the class', () => {
    const others = [
      orderDigest({ ...order, rows: 5 }, STUDENTS),
      orderDigest({ ...order, paper: 'Letter' }, STUDENTS),
      orderDigest(order, STUDENTS.slice(1)),
      orderDigest(order, [...STUDENTS].reverse()),
      orderDigest(order, STUDENTS.map((student) => ({ ...student, name: 'N. N.' }))),
      orderDigest(order, STUDENTS.map((student) => ({ ...student, wire: order.wires[0]! }))),
    ];
    expect(new Set([digest, ...others]).size).toBe(7);
  });
});
