import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeWhole } from '../../generators/press/write-whole.ts';

let folder: string;
beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), 'write-test-'))));
afterEach(() => rmSync(folder, { recursive: true }));

test('the file holds what was given, in place of what was there, and nothing lies beside it', async () => {
  writeFileSync(join(folder, 'a.pdf'), 'old');
  await writeWhole(join(folder, 'a.pdf'), 'new');
  expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('new');
  expect(readdirSync(folder)).toEqual(['a.pdf']);
});

test('what fails leaves nothing behind', async () => {
  mkdirSync(join(folder, 'taken'));
  await expect(writeWhole(join(folder, 'taken'), 'new')).rejects.toThrow('EISDIR');
  expect(readdirSync(folder)).toEqual(['taken']);
});

test('a reader sees the old file or the new one, never part of one', async () => {
  const file = join(folder, 'a.txt');
  const [old, next] = ['a'.repeat(5e6), 'b'.repeat(5e6)];
  writeFileSync(file, old);
  let done = false;
  const writing = writeWhole(file, next).then(() => (done = true));
  while (!done) {
    const seen = readFileSync(file, 'utf8');
    expect(seen === old || seen === next).toBe(true);
    await new Promise((go) => setImmediate(go));
  }
  await writing;
});
