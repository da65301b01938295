import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { type BrowserFound, findBrowser, type Machine } from '../../generators/press/browser.ts';

const folder = mkdtempSync(join(tmpdir(), 'browser-test-'));
afterAll(() => rmSync(folder, { recursive: true }));

const BUNDLED: BrowserFound = { kind: 'bundled', executable: '/cache/chromium', env: { LD_LIBRARY_PATH: '/cache/lib' } };

/** A machine on which just these files are programs. */
function machine(programs: string[], { bundled, platform = 'linux' }: { bundled?: BrowserFound; platform?: NodeJS.Platform } = {}): Machine {
  return { platform, runnable: (file) => programs.includes(file), bundled: () => Promise.resolve(bundled) };
}

test('the browser named by PUPPETEER_EXECUTABLE_PATH wins over an installed and the bundled one', async () => {
  const here = machine(['/opt/mine/chrome', '/usr/bin/chromium'], { bundled: BUNDLED });
  const found = await findBrowser({ PUPPETEER_EXECUTABLE_PATH: '/opt/mine/chrome', PATH: '/usr/bin' }, here);
  expect(found).toEqual({ kind: 'named', executable: '/opt/mine/chrome', env: {} });
});

test('an installed browser wins over the bundled one', async () => {
  const found = await findBrowser({ PATH: '/usr/bin' }, machine(['/usr/bin/chromium'], { bundled: BUNDLED }));
  expect(found).toEqual({ kind: 'installed', executable: '/usr/bin/chromium', env: {} });
});

test('the bundled browser comes last', async () => {
  expect(await findBrowser({ PATH: '/usr/bin' }, machine([], { bundled: BUNDLED }))).toBe(BUNDLED);
});

test('an empty PUPPETEER_EXECUTABLE_PATH counts as unset', async () => {
  const found = await findBrowser({ PUPPETEER_EXECUTABLE_PATH: '' }, machine([], { bundled: BUNDLED }));
  expect(found).toBe(BUNDLED);
});

test('a PUPPETEER_EXECUTABLE_PATH without a file is a mistake that names the variable and the file, though other browsers are there', async () => {
  const missing = join(folder, 'nowhere');
  const attempt = findBrowser({ ...process.env, PUPPETEER_EXECUTABLE_PATH: missing });
  await expect(attempt).rejects.toThrow(UserMistake);
  await expect(attempt).rejects.toThrow(`PUPPETEER_EXECUTABLE_PATH is ${missing}, which is not a program`);
});

test.each([
  ['a file that may not be run', () => writeFileSync(join(folder, 'plain'), '', { mode: 0o644 }), 'plain'],
  ['a folder', () => undefined, '.'],
])('%s is not a program', async (_, prepare, name) => {
  prepare();
  await expect(findBrowser({ PUPPETEER_EXECUTABLE_PATH: join(folder, name) })).rejects.toThrow('is not a program');
});

test.each([
  ['linux', 'sudo apt install chromium'],
  ['darwin', 'Install Google Chrome'],
  ['win32', 'Install Google Chrome'],
] as const)('without any browser on %s the message says what to run', async (platform, remedy) => {
  const attempt = findBrowser({}, machine([], { platform }));
  await expect(attempt).rejects.toThrow(UserMistake);
  await expect(attempt).rejects.toThrow(remedy);
  await expect(attempt).rejects.toThrow('npx @puppeteer/browsers install chrome, and set PUPPETEER_EXECUTABLE_PATH');
});
