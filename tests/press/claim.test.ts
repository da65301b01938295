import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { claim, release } from '../../generators/press/claim.ts';

let above: string;
let folder: string;
beforeEach(() => {
  above = mkdtempSync(join(tmpdir(), 'claim-test-'));
  folder = join(above, 'pack.partial');
});
afterEach(() => rmSync(above, { recursive: true, force: true }));

/** Leaves the folder as another process would. */
function heldBy(host: string, pid: number): void {
  mkdirSync(folder);
  writeFileSync(join(folder, '.held-by'), JSON.stringify({ host, pid }));
  writeFileSync(join(folder, 'half.pdf'), '');
}

/** More than Linux, macOS or Windows give out. */
const NO_PROCESS = 2 ** 30;

describe('a claimed folder', () => {
  test('is empty when it is released, and nothing stands beside it', async () => {
    await claim(folder);
    await release(folder);
    expect(readdirSync(above)).toEqual(['pack.partial']);
    expect(readdirSync(folder)).toEqual([]);
  });

  test('is refused to others while its process runs, and stays as it is', async () => {
    heldBy(hostname(), process.ppid);
    await expect(claim(folder)).rejects.toThrow(UserMistake);
    await expect(claim(folder)).rejects.toThrow(`${folder}: process ${process.ppid} is filling this folder; wait for it`);
    expect(readdirSync(above)).toEqual(['pack.partial']);
    expect(readdirSync(folder)).toContain('half.pdf');
  });

  test.each([
    ['a process that is gone', () => heldBy(hostname(), NO_PROCESS)],
    ['a process of another machine', () => heldBy('elsewhere.invalid', process.ppid)],
    ['nobody known', () => mkdirSync(join(folder, 'students'), { recursive: true })],
    ['a file', () => writeFileSync(folder, '')],
  ])('takes the place of what was left by %s', async (_, leave) => {
    leave();
    await claim(folder);
    expect(readdirSync(above)).toEqual(['pack.partial']);
    expect(readdirSync(folder)).toEqual(['.held-by']);
  });
});
