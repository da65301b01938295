import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { privateFolder } from '../../generators/press/private-folder.ts';

let home: string;
beforeEach(() => void (home = mkdtempSync(join(tmpdir(), 'home-'))));
afterEach(() => rmSync(home, { recursive: true }));

const permissions = (file: string) => statSync(file).mode & 0o777;

test('the folder is slidewire in XDG_CACHE_HOME, for the user alone', async () => {
  const folder = await privateFolder({ XDG_CACHE_HOME: join(home, 'cache'), HOME: '/elsewhere' });
  expect(folder).toBe(join(home, 'cache', 'slidewire'));
  expect(permissions(folder)).toBe(0o700);
});

test('without XDG_CACHE_HOME, or with a relative one, it is in ~/.cache', async () => {
  expect(await privateFolder({ HOME: home })).toBe(join(home, '.cache', 'slidewire'));
  expect(await privateFolder({ HOME: home, XDG_CACHE_HOME: 'cache' })).toBe(join(home, '.cache', 'slidewire'));
});

test('a folder that others may write to is not trusted', async () => {
  const open = join(home, 'slidewire');
  mkdirSync(open);
  chmodSync(open, 0o777);
  const folder = await privateFolder({ XDG_CACHE_HOME: home });
  expect(folder).not.toBe(open);
  expect(permissions(folder)).toBe(0o700);
});

test('where no folder can be made, each call gives a new temporary one for the user alone', async () => {
  writeFileSync(join(home, 'file'), '');
  const env = { XDG_CACHE_HOME: join(home, 'file', 'cache') };
  const [one, other] = [await privateFolder(env), await privateFolder(env)];
  expect(dirname(one)).toBe(tmpdir());
  expect(one).not.toBe(other);
  expect(permissions(one)).toBe(0o700);
});

test('the temporary folder goes with the process that asked for it', () => {
  const module = new URL('../../generators/press/private-folder.ts', import.meta.url).href;
  const program = `import { existsSync } from 'node:fs';
    const folder = await (await import('${module}')).privateFolder({ XDG_CACHE_HOME: '/dev/null' });
    console.log(existsSync(folder), folder);`;
  const output = execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', program], { encoding: 'utf8' });
  const [there, folder] = output.trim().split(' ');
  expect(there).toBe('true');
  expect(existsSync(folder!)).toBe(false);
});
