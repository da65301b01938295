import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { launch } from '../../generators/press/launch.ts';
import { commandOf, describeWithEachBrowser, PROC } from './outside.ts';

vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 }); // a browser on a busy machine takes its time

const folder = mkdtempSync(join(tmpdir(), 'launch-test-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A shell script in place of a browser. */
function stand(name: string, script: string): string {
  const file = join(folder, name);
  writeFileSync(file, `#!/bin/sh\n${script}\n`);
  chmodSync(file, 0o755);
  return file;
}

test('a program that is no browser is a mistake that names it and the variable to set', async () => {
  const executable = stand('no-browser', 'exit 3');
  const attempt = launch({ kind: 'named', executable, env: {} });
  await expect(attempt).rejects.toThrow(UserMistake);
  await expect(attempt).rejects.toThrow(`the browser ${executable} does not start`);
  await expect(attempt).rejects.toThrow('set PUPPETEER_EXECUTABLE_PATH to another');
});

await describeWithEachBrowser('launch', (found) => {
  test('where the sandbox is not to be had, the browser starts without', async () => {
    const tries = join(folder, `${found.kind}-tries`);
    const script = `case "$*" in *--no-sandbox*) echo without >>${tries}; exec ${found.executable} "$@";; *) echo with >>${tries}; exit 1;; esac`;
    const executable = stand(`${found.kind}-unsandboxed`, script);
    const browser = await launch({ ...found, executable }, { root: false });
    expect(browser.connected).toBe(true);
    await browser.close();
    expect(readFileSync(tries, 'utf8')).toBe('with\nwithout\n');
  });

  test('root has no sandbox, and it is not tried', async () => {
    const tries = join(folder, `${found.kind}-root`);
    const executable = stand(`${found.kind}-as-root`, `echo "$*" >>${tries}; exec ${found.executable} "$@"`);
    const browser = await launch({ ...found, executable }, { root: true });
    await browser.close();
    expect(readFileSync(tries, 'utf8')).toMatch(/^.*--no-sandbox.*\n$/);
  });

  test.skipIf(!PROC)('the browser opens no port', async () => {
    const browser = await launch(found);
    const command = commandOf(browser.process()!.pid!);
    await browser.close();
    expect(command).toContain('--remote-debugging-pipe');
    expect(command).not.toContain('--remote-debugging-port');
  });
});
