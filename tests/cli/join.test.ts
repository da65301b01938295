import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Ledger, ledgerText, makeLedger } from '../../generators/sheets/ledger.ts';
import { partOf } from '../../generators/sheets/part.ts';
import { issuesOf, orderOf, SECRET } from '../sheets/class.ts';
import { scratch, slidewire } from './slidewire.ts';

const { at, write } = scratch();
const order = orderOf();
const students = Array.from({ length: 7 }, (_, i) => ({ roll: `${i + 1}`, name: `Student ${i + 1}` }));
const issues = [...issuesOf(order, students), ...issuesOf(order, [{ ...students[5]!, sitting: 2 }])];
const head = { kind: 'assessed', secret: SECRET, orderDigest: 'a'.repeat(64), order } as const;
const whole = makeLedger(head, issues);

const save = (name: string, ledger: Ledger) => write(name, ledgerText(ledger));
const [one, two, three] = [1, 2, 3].map((number) => save(`part-${number}.json`, partOf(whole, { number, of: 3 }))) as [string, string, string];

const other = (name: string, change: Partial<Ledger>) => save(name, partOf(makeLedger({ ...head, ...change }, issues), { number: 3, of: 3 }));

describe('the ledgers of all parts', () => {
  test.each([
    ['in order', [one, two, three]],
    ['in any order', [three, one, two]],
  ])('given %s make the ledger of the class, later sittings last, byte for byte', async (title, parts) => {
    const out = at(`${title}.json`);
    expect(await slidewire(['join', ...parts, '--out', out])).toEqual({ code: 0, out: `8 sheets of 3 parts: ${out}\n`, err: '' });
    expect(readFileSync(out, 'utf8')).toBe(ledgerText(whole));
  });

  test('make it again into the same file, and into no other', async () => {
    for (let time = 0; time < 2; time++) expect(await slidewire(['join', one, two, three, '--out', at('again.json')])).toMatchObject({ code: 0 });
    const file = write('notes.txt', 'mine');
    expect(await slidewire(['join', one, two, three, '--out', file])).toEqual({ code: 1, out: '', err: `${file}: is there and is another; choose another name with --out\n` });
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });

  const short = makeLedger({ ...head, part: { number: 3, of: 3, students: 7 } }, issues.slice(4, 6));

  test.each([
    ['without one', [one, three], 'of 3 parts these are missing: 2; give the ledger of every part\n'],
    ['without two', [two], 'of 3 parts these are missing: 1, 3; give the ledger of every part\n'],
    ['with one twice', [one, two, two, three], `${two}: is part 2, as ${two} is; give each part once\n`],
    ['with one of another order', [one, two, other('order.json', { orderDigest: 'b'.repeat(64) })], `${at('order.json')}: is not of the same order and class as ${one}; join the parts of one pack\n`],
    ['with one under another secret', [one, two, other('secret.json', { secret: `${SECRET}0` })], `${at('secret.json')}: was not issued under the same secret as ${one}; join the parts of one pack\n`],
    ['with one of other parts', [one, two, save('of-four.json', partOf(whole, { number: 3, of: 4 }))], `${at('of-four.json')}: is a part of 4, which are not as many as ${one}; join the parts of one pack\n`],
    ['with one that lacks a student', [one, two, save('short.json', short)], `${at('short.json')}: holds 2 students where part 3 of 3 has 3; make that part again\n`],
    ['with a whole one', [one, save('whole.json', whole)], `${at('whole.json')}: is the ledger of a whole class and no part of one; leave it out\n`],
    ['with one that is not there', [one, at('nowhere.json')], `${at('nowhere.json')}: there is no such file; check the path\n`],
    ['with a broken one', [one, write('broken.json', '{')], `${at('broken.json')}: this is no ledger, or not a whole one`],
    ['of none', [], 'no ledgers; name those of all parts, such as part-*/teacher/ledger.json\n'],
  ])('%s make none', async (title, parts, words) => {
    const out = at(`${title}.json`);
    const { code, err } = await slidewire(['join', ...parts, '--out', out]);
    expect(code).toBe(1);
    expect(err).toContain(words);
    expect(existsSync(out)).toBe(false);
  });

  test('without --out go nowhere', async () => {
    expect(await slidewire(['join', one, two, three])).toEqual({ code: 1, out: '', err: 'say where the ledger goes: --out LEDGER.json\n' });
  });
});

test('parts of a roll that appears in two of them make none', async () => {
  const doubled = makeLedger({ ...head, part: { number: 2, of: 2, students: 2 } }, issues.slice(0, 1));
  const first = makeLedger({ ...head, part: { number: 1, of: 2, students: 2 } }, issues.slice(0, 1));
  const { code, err } = await slidewire(['join', save('d1.json', first), save('d2.json', doubled), '--out', at('doubled.json')]);
  expect(code).toBe(1);
  expect(err).toContain('roll 1 appears twice with sitting 1');
});
