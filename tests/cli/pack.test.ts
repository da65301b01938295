import { chmodSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { findBrowser } from '../../generators/press/browser.ts';
import { type Ledger, readLedger } from '../../generators/sheets/ledger.ts';
import { describeUnless } from '../outside.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

const { at, write } = scratch();
const browser = await findBrowser().then(() => [], () => ['a browser']);

const list = write('class.csv', 'roll,name\n7,Perrin Oakhollow\n8,Sabra Lintwick\n');
const order = write('order.yaml', `class: class.csv\nwires: "${WIRE}"\nsections: practice\n`);
const pack = (...args: string[]) => slidewire(['pack', ...args]);

const ledgerIn = (folder: string): Ledger => readLedger(readFileSync(join(folder, 'teacher', 'ledger.json'), 'utf8'))!;

function filesIn(folder: string): string[] {
  const all = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
  return all.map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1)).sort();
}

describe('pack refuses, with a message and no trace of a folder,', () => {
  test.each([
    ['an order without a class list', ['--wire', WIRE], 'no class list; name one in the order (class: class.csv) or with --class class.csv'],
    ['an order with mistakes', [order, '--rows', '99'], '--rows: "99" does not fit here; it takes a whole number from 3 to 6'],
    ['blank readings where they are the exercise', [order, '--experiment', 'circuit-check', '--readings', 'blank'], 'circuit-check is an exercise on readings that are given; leave out "blank"'],
    ['a class list that is not there', [order, '--class', at('none.csv')], 'there is no such file; check the path'],
    ['a class list with mistakes', [order, '--class', write('bad.csv', 'roll,name\n7,A\n7,B\n')], 'bad.csv, row 3, roll: roll 7 appears twice (first in row 2); give one of them another number'],
  ])('%s', async (_, args, words) => {
    const out = at('refused');
    const { code, err } = await pack(...args, '--out', out);
    expect(code).toBe(1);
    expect(err).toContain(words);
    expect(err).not.toMatch(/\n +at /);
    expect(existsSync(out) || existsSync(`${out}.partial`)).toBe(false);
  });

  test.each([[[]], [['--out=']]])('no folder to go to: %j', async (args) => {
    expect(await pack(order, ...args)).toEqual({ code: 1, out: '', err: 'say where the pack goes: --out DIR\n' });
  });

  test('a browser that is not there', async () => {
    vi.stubEnv('PUPPETEER_EXECUTABLE_PATH', '/nowhere/browser');
    const { code, err } = await pack(order, '--out', at('unprinted'));
    vi.unstubAllEnvs();
    expect(code).toBe(1);
    expect(err).toContain('PUPPETEER_EXECUTABLE_PATH is /nowhere/browser, which is not a program; correct it, or unset it');
    expect(readdirSync(at('.')).filter((name) => name.startsWith('unprinted'))).toEqual([]);
  });

  test.skipIf(process.platform === 'win32')('a browser that does not start', async () => {
    const stand = write('no-browser', '#!/bin/sh\nexit 3\n');
    chmodSync(stand, 0o755);
    vi.stubEnv('PUPPETEER_EXECUTABLE_PATH', stand);
    const { code, err } = await pack(order, '--out', at('unprinted'));
    vi.unstubAllEnvs();
    expect(code).toBe(1);
    expect(err).toContain(`the browser ${stand} does not start`);
    expect(readdirSync(at('.')).filter((name) => name.startsWith('unprinted'))).toEqual([]);
  });

  test('a folder that holds something else, of which nothing is touched', async () => {
    write('taken/notes.txt', 'mine');
    const { code, err } = await pack(order, '--out', at('taken'));
    expect(code).toBe(1);
    expect(err).toContain(`${at('taken')}: the folder is there and holds no pack of this order and class; choose another with --out, or remove it`);
    expect(filesIn(at('taken'))).toEqual(['notes.txt']);
  });

  test('a path through a file', async () => {
    const { code, err } = await pack(order, '--out', join(list, 'pack'));
    expect(code).toBe(1);
    expect(err).toContain('a part of the path is a file, not a folder; choose another with --out');
  });
});

describeUnless(browser, 'pack', () => {
  const folder = at('pack');
  let ledger: Ledger;
  beforeAll(async () => {
    const { code, out, err } = await pack(order, '--out', folder);
    expect({ code, err: err.replace(/.*\d+\/\d+\n/g, '') }).toEqual({ code: 0, err: '' });
    expect(out).toBe(`2 students. For the students: ${join(folder, 'students')}\nFor the teacher alone: ${join(folder, 'teacher')}\n`);
    ledger = ledgerIn(folder);
  });

  test('makes worksheets for the students, and for the teacher keys, solutions, the grid and the ledger', () => {
    expect(filesIn(folder)).toEqual([
      'students/single/worksheet-1-roll-7.pdf',
      'students/single/worksheet-2-roll-8.pdf',
      'students/worksheets-1.pdf',
      'teacher/answers.csv',
      'teacher/keys-1.pdf',
      'teacher/ledger.json',
      'teacher/ledger.schema.json',
      'teacher/marking-grid.pdf',
      'teacher/single/key-1-roll-7.pdf',
      'teacher/single/key-2-roll-8.pdf',
      'teacher/solutions-1.pdf',
      'teacher/typing.html',
    ]);
  });

  test('without a seed is assessed, under 128 random bits', () => {
    expect(ledger.kind).toBe('assessed');
    expect(ledger.secret).toMatch(/^[0-9a-f]{32}$/);
    expect(ledger.issues.map(({ roll, name }) => [roll, name])).toEqual([['7', 'Perrin Oakhollow'], ['8', 'Sabra Lintwick']]);
  });

  test('of the same order into the same folder is the same pack again, and keeps what the teacher put beside it', async () => {
    writeFileSync(join(folder, 'teacher', 'marks.csv'), 'roll,mark\n');
    writeFileSync(join(folder, 'teacher', 'answers.csv'), 'typed\n');
    const worksheet = join(folder, 'students', 'single', 'worksheet-1-roll-7.pdf');
    const before = readFileSync(worksheet);
    expect((await pack(order, '--out', folder)).code).toBe(0);
    expect(ledgerIn(folder)).toEqual(ledger);
    expect(readFileSync(worksheet).equals(before)).toBe(true);
    expect(filesIn(folder)).toContain('teacher/marks.csv');
    expect(readFileSync(join(folder, 'teacher', 'answers.csv'), 'utf8')).toBe('typed\n');
  });

  test('of another order, or for another class, leaves the folder alone', async () => {
    for (const other of [['--rows', '5'], ['--class', write('more.csv', 'roll,name\n7,Perrin Oakhollow\n')]]) {
      expect(await pack(order, ...other, '--out', folder)).toMatchObject({ code: 1, err: expect.stringContaining('holds no pack of this order and class') });
    }
    expect(ledgerIn(folder)).toEqual(ledger);
  });

  test('makes another pack in another folder, secret and readings of its own', async () => {
    const { code } = await pack(order, '--class', write('one.csv', 'roll,name\n7,Perrin Oakhollow\n'), '--out', at('other'));
    expect(code).toBe(0);
    const other = ledgerIn(at('other'));
    expect(other.secret).not.toBe(ledger.secret);
    expect(other.issues[0]!.sheet.readings).not.toEqual(ledger.issues[0]!.sheet.readings);
  });

  test('with a seed is for practice, says so, and is the same wherever it is made', async () => {
    const args = [order, '--class', write('alone.csv', 'roll,name\n7,Perrin Oakhollow\n'), '--seed', 'spring'];
    const { err } = await pack(...args, '--out', at('p1'));
    expect(err).toContain('A practice pack: whoever knows or guesses the seed "spring" can make its keys. Leave out the seed for work that counts.\n');
    await pack(...args, '--out', at('p2'));
    expect(ledgerIn(at('p1'))).toEqual(ledgerIn(at('p2')));
    expect(ledgerIn(at('p1'))).toMatchObject({ kind: 'practice', secret: 'spring' });
    for (const file of filesIn(at('p1'))) expect(readFileSync(at('p1', file)).equals(readFileSync(at('p2', file))), file).toBe(true);
  });

  test('for a class of one has its worksheet and its key once', () => {
    expect(filesIn(at('other')).filter((file) => file.endsWith('.pdf'))).toEqual([
      'students/single/worksheet-1-roll-7.pdf',
      'teacher/marking-grid.pdf',
      'teacher/single/key-1-roll-7.pdf',
      'teacher/solutions-1.pdf',
    ]);
  });

  test('with blank readings has cards in place of keys', async () => {
    const { code } = await pack(order, '--class', write('blank.csv', 'roll,name\n7,Perrin Oakhollow\n'), '--readings', 'blank', '--out', at('blank'));
    expect(code).toBe(0);
    expect(filesIn(at('blank'))).toEqual([
      'students/single/worksheet-1-roll-7.pdf',
      'teacher/cards.pdf',
      'teacher/ledger.json',
      'teacher/ledger.schema.json',
    ]);
  });
});
