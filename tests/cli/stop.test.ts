import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { describe, expect, test, vi } from 'vitest';
import { findBrowser } from '../../generators/press/browser.ts';
import { describeUnless } from '../outside.ts';
import { commandOf, PROC, processesBelow } from '../press/outside.ts';
import { scratch, WIRE } from './slidewire.ts';

const program = fileURLToPath(new URL('../../generators/cli/slidewire.js', import.meta.url));
const browser = await findBrowser().then(() => [], () => ['a browser']);
const { at, write } = scratch();
const students = Array.from({ length: 12 }, (_, i) => `${i + 1},Student ${i + 1}\n`);
const order = write('order.yaml', `class: class.csv\nwires: "${WIRE}"\nsections: practice\n`);
write('class.csv', `roll,name\n${students.join('')}`);
write('one.csv', 'roll,name\n1,Student 1\n');

function start(folder: string, ...more: string[]): ChildProcess {
  return spawn(process.execPath, [program, 'pack', order, '--out', at(folder), ...more], { stdio: ['ignore', 'pipe', 'pipe'] });
}

/** Waits until a first worksheet is printed, so that the work is surely under way. */
async function halfWay(folder: string, child: ChildProcess): Promise<void> {
  const single = at(`${folder}.partial`, 'students', 'single');
  while (!existsSync(single) || readdirSync(single).length === 0) {
    if (child.exitCode !== null) throw new Error(`ended with ${child.exitCode} before it was half-way`);
    await wait(20);
  }
}

async function ended(child: ChildProcess): Promise<{ code: number | null; signal: NodeJS.Signals | null }> {
  const [code, signal] = (await once(child, 'exit')) as [number | null, NodeJS.Signals | null];
  return { code, signal };
}

const foldersOf = (name: string) => readdirSync(at('.')).filter((each) => each.startsWith(name));

describeUnless(browser, 'a pack that is stopped half-way', () => {
  test.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ] as const)('by %s ends with %i, and leaves no folder, no half of one and no browser', async (signal, code) => {
    const child = start(signal);
    const end = ended(child);
    await halfWay(signal, child);
    const below = PROC ? processesBelow(child.pid!) : [];
    child.kill(signal);
    expect(await end).toEqual({ code, signal: null });
    expect(foldersOf(signal)).toEqual([]);
    await vi.waitFor(() => expect(below.map(commandOf).filter(Boolean)).toEqual([]), 10_000);
  });

  test('by SIGKILL leaves no folder, and a second run makes it whole', async () => {
    const child = start('killed', '--class', at('one.csv'));
    const end = ended(child);
    await halfWay('killed', child);
    const below = PROC ? processesBelow(child.pid!) : [];
    child.kill('SIGKILL');
    await end;
    for (const id of below) killIfThere(id);
    expect(foldersOf('killed')).toEqual(['killed.partial']);
    const again = start('killed', '--class', at('one.csv'));
    expect(await ended(again)).toMatchObject({ code: 0 });
    expect(foldersOf('killed')).toEqual(['killed']);
    expect(JSON.parse(readFileSync(at('killed', 'teacher', 'ledger.json'), 'utf8')).issues).toHaveLength(1);
  });

  test('while it is made again leaves the pack that was there', async () => {
    expect(await ended(start('kept', '--class', at('one.csv')))).toMatchObject({ code: 0 });
    const ledger = readFileSync(at('kept', 'teacher', 'ledger.json'), 'utf8');
    const child = start('kept', '--class', at('one.csv'));
    const end = ended(child);
    await halfWay('kept', child);
    child.kill('SIGINT');
    expect(await end).toMatchObject({ code: 130 });
    expect(foldersOf('kept')).toEqual(['kept']);
    expect(readFileSync(at('kept', 'teacher', 'ledger.json'), 'utf8')).toBe(ledger);
    expect(readdirSync(at('kept', 'students', 'single'))).toHaveLength(1);
  });
});

describe('output that nobody reads', () => {
  test('ends the work without a stack', async () => {
    const child = spawn(process.execPath, [program, 'help', 'pack'], { stdio: ['ignore', 'pipe', 'pipe'] });
    let err = '';
    child.stderr.on('data', (text: Buffer) => (err += text.toString()));
    child.stdout.destroy();
    await ended(child);
    expect(err).toBe('');
  });
});

/** Browsers of a killed process may have ended by themselves. */
function killIfThere(id: number): void {
  try {
    process.kill(id, 'SIGKILL');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ESRCH') throw error;
  }
}
