import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { bundledBrowser } from '../../generators/press/bundled.ts';
import { run } from './outside.ts';

vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 }); // a browser on a busy machine takes its time

const here = process.platform === 'linux' && process.arch === 'x64' && isInstalled();
if (process.env.CI && !here) throw new Error('the bundled browser is missing');

describe.skipIf(!here)('the bundled browser (skipped where @sparticuz/chromium is not installed)', () => {
  let home: string;
  beforeAll(() => void (home = mkdtempSync(join(tmpdir(), 'home-'))));
  afterAll(() => rmSync(home, { recursive: true }));

  test('two who unpack it at once get the same whole browser, in a folder of their own named by version', async () => {
    const env = { ...process.env, XDG_CACHE_HOME: home };
    const [one, other] = await Promise.all([bundledBrowser(env), bundledBrowser(env)]);
    expect(one).toEqual(other);
    expect(readdirSync(join(home, 'slidewire'))).toEqual([expect.stringMatching(/^chromium-\d+\.\d+\.\d+$/)]);
    expect(one!.executable).toBe(join(home, 'slidewire', readdirSync(join(home, 'slidewire'))[0]!, 'chromium'));
    expect(statSync(join(one!.executable, '..')).mode & 0o777).toBe(0o700);
  });

  test('it is unpacked once only', async () => {
    const env = { ...process.env, XDG_CACHE_HOME: home };
    const made = () => bundledBrowser(env).then((found) => statSync(found!.executable).ctimeMs);
    expect(await made()).toBe(await made());
  });

  test('it brings every shared library that it needs beyond those of a minimal Debian', async () => {
    const found = (await bundledBrowser({ ...process.env, XDG_CACHE_HOME: home }))!;
    const needed = run('/lib64/ld-linux-x86-64.so.2', '--library-path', found.env.LD_LIBRARY_PATH!, '--list', found.executable);
    // Essential in Debian: libc6 and libgcc-s1 (apt show: Priority required).
    const others = [...needed.matchAll(/=> (\S+)/g)].map(([, file]) => file!).filter((file) => !file.startsWith(home));
    expect(others.map((file) => file.split('/').at(-1))).toEqual(
      expect.arrayContaining(['libc.so.6', 'libm.so.6']),
    );
    for (const file of others) expect(file).toMatch(/\/(libc|libm|libdl|libpthread|librt|libgcc_s)\.so\.\d$/);
  });

  test('when unpacking fails, the error says where and nothing is left behind', async () => {
    writeFileSync(join(home, 'nothing.cjs'), 'process.exit(1)');
    const env = { XDG_CACHE_HOME: join(home, 'other'), NODE_OPTIONS: `--require ${join(home, 'nothing.cjs')}` };
    await expect(bundledBrowser(env)).rejects.toThrow(`could not be unpacked into ${join(home, 'other', 'slidewire')}`);
    expect(readdirSync(join(home, 'other', 'slidewire'))).toEqual([]);
  });

  test('nothing of it goes straight into the temporary folder', () => {
    for (const name of ['chromium', 'al2023', 'fonts', 'libGLESv2.so']) expect(existsSync(join(tmpdir(), name))).toBe(false);
  });
});

function isInstalled(): boolean {
  try {
    createRequire(import.meta.url).resolve('@sparticuz/chromium');
    return true;
  } catch {
    return false;
  }
}
