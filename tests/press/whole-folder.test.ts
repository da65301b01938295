import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { mendFolder, temporaryFolder, textIfThere, wholeFolder } from '../../generators/press/whole-folder.ts';

let above: string;
let folder: string;
beforeEach(() => {
  above = mkdtempSync(join(tmpdir(), 'whole-folder-test-'));
  folder = join(above, 'pack');
});
afterEach(() => rmSync(above, { recursive: true, force: true }));

const put = (path: string, text: string) => {
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, text);
};
const held = (path: string) => readFileSync(join(folder, path), 'utf8');

describe('a whole folder', () => {
  test('is there when all of it is, and nothing beside it', async () => {
    await wholeFolder(folder, async (partial) => {
      put(join(partial, 'deep/file'), 'new');
      expect(existsSync(folder)).toBe(false);
    });
    expect(held('deep/file')).toBe('new');
    expect(readdirSync(above)).toEqual(['pack']);
  });

  test('is not there after a failure, whose error comes through', async () => {
    const failure = new Error('in the middle');
    const attempt = wholeFolder(folder, async (partial) => {
      put(join(partial, 'file'), 'half');
      throw failure;
    });
    await expect(attempt).rejects.toBe(failure);
    expect(readdirSync(above)).toEqual([]);
  });

  test('is what it was before after a failure', async () => {
    put(join(folder, 'file'), 'old');
    await expect(wholeFolder(folder, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    expect(held('file')).toBe('old');
    expect(readdirSync(above)).toEqual(['pack']);
  });

  test('takes the place of an earlier one, and keeps the files there that are not its own', async () => {
    put(join(folder, 'file'), 'old');
    put(join(folder, 'marks/class.csv'), 'marks');
    await wholeFolder(folder, async (partial) => put(join(partial, 'file'), 'new'));
    expect(held('file')).toBe('new');
    expect(held('marks/class.csv')).toBe('marks');
    expect(readdirSync(above)).toEqual(['pack']);
  });

  test('does not take over what a killed process has left half done', async () => {
    put(join(`${folder}.partial`, 'stale'), 'stale');
    await wholeFolder(folder, async (partial) => put(join(partial, 'file'), 'new'));
    expect(readdirSync(folder)).toEqual(['file']);
  });

  test('leaves no listeners on the process', async () => {
    const before = process.listenerCount('exit');
    await wholeFolder(folder, async () => undefined);
    expect(process.listenerCount('exit')).toBe(before);
  });

  test('that cannot be made, since a part of its path is a file, is a mistake that says so', async () => {
    put(join(above, 'file'), '');
    const attempt = wholeFolder(join(above, 'file', 'pack'), async () => undefined);
    await expect(attempt).rejects.toThrow(UserMistake);
    await expect(attempt).rejects.toThrow('a part of the path is a file');
  });

  test.each([
    ['ENOSPC', undefined, 'the disk is full'],
    ['EACCES', 'pack.partial/x', 'you may not write here'],
    ['EBUSY', 'pack', 'another program holds it'],
  ])('that cannot be written (%s) is a mistake', async (code, path, words) => {
    const cause = Object.assign(new Error(code), { code, ...(path && { path: join(above, path) }) });
    const attempt = wholeFolder(folder, () => Promise.reject(cause));
    await expect(attempt).rejects.toThrow(UserMistake);
    await expect(attempt).rejects.toThrow(`${folder}: ${words}`);
    await expect(attempt).rejects.toMatchObject({ cause });
  });

  test('is not blamed for a file elsewhere that cannot be read', async () => {
    const cause = Object.assign(new Error('no'), { code: 'EACCES', path: '/elsewhere/font' });
    await expect(wholeFolder(folder, () => Promise.reject(cause))).rejects.toBe(cause);
  });
});

describe('a folder that was set aside by a process that was killed', () => {
  test('is put back', () => {
    put(join(`${folder}.old`, 'file'), 'old');
    mendFolder(folder);
    expect(held('file')).toBe('old');
    expect(readdirSync(above)).toEqual(['pack']);
  });

  test('stays aside where the new one is in its place', () => {
    put(join(`${folder}.old`, 'file'), 'old');
    put(join(folder, 'file'), 'new');
    mendFolder(folder);
    expect(held('file')).toBe('new');
  });
});

describe('a temporary folder', () => {
  test('is there for the work on it, and gone after', async () => {
    const seen = await temporaryFolder(async (temporary) => {
      put(join(temporary, 'file'), 'x');
      return temporary;
    });
    expect(existsSync(seen)).toBe(false);
  });

  test('is gone after a failure too', async () => {
    let seen = '';
    const attempt = temporaryFolder(async (temporary) => {
      seen = temporary;
      throw new Error('no');
    });
    await expect(attempt).rejects.toThrow('no');
    expect(seen).not.toBe('');
    expect(existsSync(seen)).toBe(false);
  });
});

test('the text of a file that is not there is nothing; of a folder it is an error', async () => {
  put(join(above, 'file'), 'text');
  expect(await textIfThere(join(above, 'file'))).toBe('text');
  expect(await textIfThere(join(above, 'none'))).toBeUndefined();
  expect(await textIfThere(join(above, 'file', 'below'))).toBeUndefined();
  await expect(textIfThere(above)).rejects.toThrow('EISDIR');
});
