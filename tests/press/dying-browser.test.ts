import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { openPress, type Press } from '../../generators/press/print.ts';
import { describeWithEachBrowser, isBrowser, isRenderer, PROC, processesBelow } from './outside.ts';
import { pages } from './sample.ts';

vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 }); // a browser on a busy machine takes its time

const folder = mkdtempSync(join(tmpdir(), 'dying-test-'));
afterAll(() => rmSync(folder, { recursive: true }));

const LONG = 800; // pages: so many that the browser is surely still at work when it is killed

/** Kills the processes below this one that `which` picks, all that are there now. */
function kill(which: (id: number) => boolean = () => true): number {
  const victims = processesBelow(process.pid).filter(which);
  for (const id of victims) process.kill(id, 'SIGKILL');
  return victims.length;
}

// Browsers are killed through /proc, so elsewhere than on Linux there is nothing to run.
if (!PROC) describe.skip('a dying browser (skipped: there is no /proc)');
else await describeWithEachBrowser('a dying browser', (found) => {
  let document: string;
  let press: Press;
  let file: string;
  beforeAll(() => void (document = pages(LONG)));
  beforeEach(async () => {
    press = await openPress({ found, workers: 2 });
    file = join(folder, `${found.kind}.pdf`);
  });
  afterEach(async () => {
    await press.close();
    rmSync(file, { force: true });
  });

  /** Prints the long document; 300 ms later, in the middle of it, `act` is called. */
  async function printWhile(act: () => void): Promise<{ pages: number }> {
    let done = false;
    const printing = press.print(document, file).finally(() => (done = true));
    await wait(300);
    expect(done).toBe(false);
    act();
    return printing;
  }

  test('is replaced, and the document printed by the next', async () => {
    const result = await printWhile(() => expect(kill()).toBeGreaterThan(0));
    expect(result).toEqual({ pages: LONG });
    expect(existsSync(file)).toBe(true);
  });

  test('of which only the process of the page dies prints it on a new page', async () => {
    const browsers = processesBelow(process.pid).filter(isBrowser);
    const result = await printWhile(() => expect(kill(isRenderer)).toBeGreaterThan(0));
    expect(result).toEqual({ pages: LONG });
    expect(processesBelow(process.pid).filter(isBrowser)).toEqual(browsers);
  });

  test('that dies between two documents is replaced by one other, though two documents wait for it', async () => {
    kill();
    await wait(100);
    const other = join(folder, 'other.pdf');
    const results = await Promise.all([press.print(pages(2), file), press.print(pages(3), other)]);
    expect(results).toEqual([{ pages: 2 }, { pages: 3 }]);
    expect(processesBelow(process.pid).filter(isBrowser)).toHaveLength(1);
  });

  test('that dies again is an error with the name of the file, and no file', async () => {
    let killing: NodeJS.Timeout | undefined;
    const attempt = printWhile(() => void (killing = setInterval(() => kill(isRenderer), 500)));
    await expect(attempt.finally(() => clearInterval(killing))).rejects.toThrow(
      `the browser failed twice while printing ${file}`,
    );
    expect(readdirSync(folder).filter((name) => name.startsWith(found.kind))).toEqual([]);
  });
});
