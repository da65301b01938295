import { execFileSync } from 'node:child_process';
import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { findBrowser } from '../../generators/press/browser.ts';
import { ledgerText, readLedger } from '../../generators/sheets/ledger.ts';
import { partOf } from '../../generators/sheets/part.ts';
import { describeUnless } from '../outside.ts';
import { filesIn } from './files.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

const { at, write } = scratch();
const browser = await findBrowser().then(() => [], () => ['a browser']);
write('class.csv', 'roll,name\n7,Perrin Oakhollow\n8,Sabra Lintwick\n12,Yorick Embleton-Vane\n3,Tamsin Orrery\n');
const order = write('bridge.yaml', `class: class.csv\nwires: ["${WIRE}", "manganin, 0.38 mm, 90 cm"]\nsections: practice\n`);
const rollsIn = (...file: string[]) => readLedger(readFileSync(at(...file), 'utf8')).issues.map(({ roll }) => roll);

/** A student's own documents by kind and roll: a file's number is its place in its part. */
function singles(folder: string): Record<string, string> {
  const own = Object.entries(filesIn(at(folder))).filter(([path]) => path.includes('/single/'));
  return Object.fromEntries(own.map(([path, hash]) => [path.replace(/-\d+-roll-/, '-roll-'), hash]));
}

const shell = process.platform === 'win32' ? ['a POSIX shell'] : [];

describeUnless([...browser, ...shell], 'a run in three parts, by the commands of the README,', () => {
  beforeAll(() => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const [, section = ''] = readme.split('## Many schools, many machines\n');
    const [commands, job] = [...section.matchAll(/```sh\n([^]*?)```/g)].map(([, text]) => text!) as [string, string];
    sh(commands);
    write('north/class.csv', readFileSync(at('class.csv')));
    write('north/north.yaml', readFileSync(order));
    write('north/north.json', readFileSync(at('ledger.json')));
    writeFileSync(at('print-part.sh'), job);
    sh('cd north\nTASK=2 TASKS=3 sh ../print-part.sh');
    sh('npx slidewire pack bridge.yaml --ledger ledger.json --out whole');
  });

  /** Runs commands of a shell, with the program of this checkout. */
  function sh(commands: string): void {
    const program = fileURLToPath(new URL('../../generators/cli/slidewire.js', import.meta.url));
    chmodSync(write('bin/npx', `#!/bin/sh\nshift\nexec "${process.execPath}" "${program}" "$@"\n`), 0o755);
    const env = { ...process.env, PATH: `${at('bin')}${delimiter}${process.env['PATH']}` };
    execFileSync('sh', ['-eu', '-c', commands], { cwd: at('.'), env, stdio: 'pipe' });
  }

  test('gives each student the same bytes as a run in one', () => {
    const parts = ['part-1', 'part-2', 'part-3'].map(singles);
    expect(Object.assign({}, ...parts)).toEqual(singles('whole'));
    expect(parts.map((part) => Object.keys(part).length)).toEqual([2, 2, 4]);
  });

  test('keeps the order of the class', () => {
    expect(['part-1', 'part-2', 'part-3'].map((part) => rollsIn(part, 'teacher', 'ledger.json'))).toEqual([['7'], ['8'], ['12', '3']]);
  });

  test('joins into the ledger that was issued, byte for byte, which is also that of the run in one', () => {
    const issued = readFileSync(at('ledger.json'), 'utf8');
    expect(readFileSync(at('joined.json'), 'utf8')).toBe(issued);
    expect(readFileSync(at('whole', 'teacher', 'ledger.json'), 'utf8')).toBe(issued);
  });

  test('is the same as a task of an array job', () => {
    expect(filesIn(at('north', 'north-part-2'))).toEqual(filesIn(at('part-2')));
  });

  test('can be repeated, each part by itself, and by no other', async () => {
    const before = filesIn(at('part-1'));
    const args = ['pack', order, '--ledger', at('ledger.json'), '--out', at('part-1')];
    expect(await slidewire([...args, '--shard', '1/3'])).toMatchObject({ code: 0, out: expect.stringContaining('Part 1 of 3: 1 student. For the students:') });
    for (const [shard, wanted] of [[['--shard', '2/3'], 'part 2 of 3'], [['--shard', '1/4'], 'part 1 of 4'], [[], 'pack']] as const) {
      expect(await slidewire([...args, ...shard])).toMatchObject({ code: 1, err: expect.stringContaining(`the folder is there and holds no ${wanted} of this order and class from this ledger`) });
    }
    expect(filesIn(at('part-1'))).toEqual(before);
  });

  test('of a practice pack needs no ledger: the seed is one for all', async () => {
    for (const [shard, out] of [['1/2', 's1'], ['2/2', 's2']] as const) {
      expect(await slidewire(['pack', order, '--seed', 'spring', '--shard', shard, '--out', at(out)])).toMatchObject({ code: 0 });
    }
    expect(await slidewire(['issue', order, '--seed', 'spring', '--out', at('spring.json')])).toMatchObject({ code: 0 });
    expect(await slidewire(['join', at('s2', 'teacher', 'ledger.json'), at('s1', 'teacher', 'ledger.json'), '--out', at('sprung.json')])).toMatchObject({ code: 0 });
    expect(readFileSync(at('sprung.json'), 'utf8')).toBe(readFileSync(at('spring.json'), 'utf8'));
  });
});

describe('a part is refused', () => {
  test('of an assessed pack without a ledger, where each would have a secret of its own', async () => {
    const { code, err } = await slidewire(['pack', order, '--shard', '1/3', '--out', at('none')]);
    expect(code).toBe(1);
    expect(err).toContain('the parts of an assessed pack need one secret; make a ledger first (slidewire issue ORDER.yaml --out LEDGER.json)');
  });

  test.each([
    ['0/3', 'names no part; the parts are 1/3 to 3/3'],
    ['4/3', 'names no part; the parts are 1/3 to 3/3'],
    ['1/5', 'makes more parts than the class has students; give 4 at most'],
    ['1', 'does not fit here; it takes two numbers such as 2/5'],
    ['1/3/5', 'does not fit here; it takes two numbers such as 2/5'],
    ['a/b', 'does not fit here; it takes two numbers such as 2/5'],
  ])('by the name %s', async (shard, words) => {
    const { code, err } = await slidewire(['pack', order, '--seed', 'spring', '--shard', shard, '--out', at('none')]);
    expect(code).toBe(1);
    expect(err).toContain(`--shard: "${shard}" ${words}`);
  });

  test('of a ledger that is not there, of another class, or of a part', async () => {
    await slidewire(['issue', order, '--out', at('own.json')]);
    const pack = (ledger: string, ...more: string[]) => slidewire(['pack', order, '--ledger', at(ledger), '--out', at('none'), ...more]);
    expect(await pack('nowhere.json')).toMatchObject({ code: 1, err: expect.stringContaining('nowhere.json: there is no such file; check the path') });
    expect(await pack('own.json', '--rows', '5')).toMatchObject({ code: 1, err: expect.stringContaining('own.json: was issued for another order or class') });
    write('half.json', ledgerText(partOf(readLedger(readFileSync(at('own.json'), 'utf8')), { number: 1, of: 2 })));
    expect(await pack('half.json')).toMatchObject({ code: 1, err: expect.stringContaining('half.json: holds part 1 of 2 alone; give the ledger of the whole class') });
    expect(() => filesIn(at('none'))).toThrow('ENOENT');
  });
});

describe('a ledger that is issued', () => {
  test('stays when its order is issued again, and is not overwritten by another', async () => {
    expect(await slidewire(['issue', order, '--out', at('twice.json')])).toMatchObject({ code: 0, out: `4 sheets, issued, for the teacher alone: ${at('twice.json')}\n` });
    const before = readFileSync(at('twice.json'), 'utf8');
    expect(await slidewire(['issue', order, '--out', at('twice.json')])).toMatchObject({ code: 0, out: `4 sheets, issued before, for the teacher alone: ${at('twice.json')}\n` });
    expect(await slidewire(['issue', order, '--rows', '5', '--out', at('twice.json')])).toMatchObject({ code: 1, err: expect.stringContaining('holds the ledger of another order or class') });
    expect(readFileSync(at('twice.json'), 'utf8')).toBe(before);
  });

  test('goes into folders that are made for it, and not in place of a folder', async () => {
    expect(await slidewire(['issue', order, '--out', at('a', 'b', 'ledger.json')])).toMatchObject({ code: 0 });
    expect(rollsIn('a', 'b', 'ledger.json')).toEqual(['7', '8', '12', '3']);
    expect(await slidewire(['issue', order, '--out', at('a')])).toEqual({ code: 1, out: '', err: `${at('a')}: this is a folder, not a file; give another path\n` });
  });
});
