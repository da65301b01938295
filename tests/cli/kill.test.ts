import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { findBrowser } from '../../generators/press/browser.ts';
import { streams } from '../../generators/random.ts';
import { readLedger } from '../../generators/sheets/ledger.ts';
import { describeUnless } from '../outside.ts';
import { isBrowser, PROC, processesBelow } from '../press/outside.ts';
import { filesIn } from './files.ts';
import { scratch, WIRE } from './slidewire.ts';

const program = fileURLToPath(new URL('../../generators/cli/slidewire.js', import.meta.url));
const browser = await findBrowser().then(() => [], () => ['a browser']);
const { at, write } = scratch();
write('class.csv', 'roll,name\n1,Perrin Oakhollow\n2,Sabra Lintwick\n');
const order = write('order.yaml', `class: class.csv\nwires: "${WIRE}"\nsections: practice\nseed: spring\n`);
// Browsers that are killed leave their profiles; they go with the scratch folder.
mkdirSync(at('tmp'));
const env = { ...process.env, TMPDIR: at('tmp') };

/** Files of a pack of this order. */
const FILES = 12;
/** Those of them in which a further set has a place. */
const GROWING = Object.fromEntries(['ledger.json', 'answers.csv', 'typing.html'].map((name) => [`teacher/${name}`, expect.any(String)]));

const MOMENTS = process.env['CI'] ? 20 : 6;
const random = streams('kill').of('moments');
/** Shares of the time that a whole run takes. */
const moments = Array.from({ length: MOMENTS }, () => random.uniform());

const start = (...args: string[]) => spawn(process.execPath, [program, 'pack', ...args], { stdio: 'ignore', env });
const ended = async (child: ChildProcess) => (child.exitCode ?? child.signalCode ?? ((await once(child, 'exit'))[0] as number | null));

/** Kills the program and its browsers at one go, when so much time has passed. */
async function killed(child: ChildProcess, after: number): Promise<void> {
  await Promise.race([wait(after), ended(child)]);
  const below = child.exitCode === null ? processesBelow(child.pid!) : [];
  for (const id of [child.pid!, ...below]) kill(id);
  await ended(child);
}

function kill(id: number): void {
  try {
    process.kill(id, 'SIGKILL');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ESRCH') throw error;
  }
}

/** What a folder holds; nothing where it is not there. */
const heldIn = (folder: string) => (readdirSync(at('.')).includes(folder) ? filesIn(at(folder)) : {});

describeUnless([...browser, ...(PROC ? [] : ['/proc'])], `a pack, killed with its browser at ${MOMENTS} random moments,`, () => {
  let whole: Record<string, string>;
  let time: number;

  beforeAll(async () => {
    const from = performance.now();
    expect(await ended(start(order, '--out', at('whole')))).toBe(0);
    time = performance.now() - from;
    whole = filesIn(at('whole'));
    expect(Object.keys(whole)).toHaveLength(FILES);
  });

  test('is there whole or not at all, is never taken up half made, and is whole after one more run', async () => {
    const [first, second] = [moments.slice(0, MOMENTS / 2), moments.slice(MOMENTS / 2)];
    const made: number[] = [];
    for (const moment of first) {
      made.push(await heldAfter(moment));
      rmSync(at('pack'), { recursive: true, force: true });
    }
    expect(made).toContain(0);
    expect(await ended(start(order, '--out', at('pack')))).toBe(0);
    const madeAgain: number[] = [];
    for (const moment of second) madeAgain.push(await heldAfter(moment));
    expect(madeAgain).toContain(FILES);
    expect(await ended(start(order, '--out', at('pack')))).toBe(0);
    expect(filesIn(at('pack'))).toEqual(whole);
    expect(readdirSync(at('.')).filter((name) => name.startsWith('pack'))).toEqual(['pack']);
  }, 300_000);

  /** How many files the pack has after a run that was killed: none, or all. */
  async function heldAfter(moment: number): Promise<number> {
    await killed(start(order, '--out', at('pack')), moment * time);
    const held = heldIn('pack');
    if (Object.keys(held).length > 0) expect(held).toEqual(whole);
    return Object.keys(held).length;
  }

  test('while a set is added, holds the set whole or not at all', async () => {
    for (const moment of moments.slice(0, Math.ceil(MOMENTS / 4))) {
      const before = filesIn(at('whole'));
      await killed(start('--again', '2', '--out', at('whole')), (moment * time) / 2);
      const held = heldIn('whole');
      expect(held).toMatchObject({ ...before, ...GROWING });
      const { issues } = readLedger(readFileSync(at('whole', 'teacher', 'ledger.json'), 'utf8'));
      const answers = readFileSync(at('whole', 'teacher', 'answers.csv'), 'utf8');
      expect(issues.filter(({ code }) => !answers.includes(code))).toEqual([]);
      expect(answers.trim().split('\n')).toHaveLength(1 + issues.length);
      const further = issues.filter(({ sitting }) => sitting > 1).length;
      expect(Object.keys(held)).toHaveLength(FILES + 3 * further);
    }
  });

  test('loses nothing when the browser alone is killed', async () => {
    const child = start(order, '--out', at('alone'));
    await Promise.race([wait(time / 2), ended(child)]);
    for (const id of processesBelow(child.pid!).filter(isBrowser)) kill(id);
    expect(await ended(child)).toBe(0);
    expect(filesIn(at('alone'))).toEqual(whole);
  });
});
