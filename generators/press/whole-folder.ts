import { existsSync, renameSync, rmSync } from 'node:fs';
import { cp, mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { claim, release } from './claim.ts';

/**
 * Fills a folder that appears whole or not at all: `fill` writes into DIR.partial, which then takes the place of DIR.
 * After a failure or a stop DIR is what it was before. Files of an earlier DIR that `fill` does not write are kept.
 */
export async function wholeFolder(folder: string, fill: (partial: string) => Promise<void>): Promise<void> {
  const partial = `${folder}.partial`;
  try {
    await claim(partial);
    await passing(partial, async () => {
      await fill(partial);
      await release(partial);
      if (existsSync(folder)) await cp(folder, partial, { recursive: true, force: false });
      replace(folder, partial);
    });
  } catch (error) {
    throw diskTrouble(folder, error);
  }
}

/** A temporary folder, there as long as the work on it. */
export async function temporaryFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'slidewire-'));
  return passing(folder, () => work(folder));
}

/** Clears a folder away after the work on it, also where the process exits in the middle. */
async function passing<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const clear = () => rmSync(folder, { recursive: true, force: true });
  process.once('exit', clear);
  try {
    return await work();
  } finally {
    process.off('exit', clear);
    clear();
  }
}

/** Two renames at one go, so that no stop comes between; `mendFolder` mends what a kill leaves. */
function replace(folder: string, partial: string): void {
  const old = `${folder}.old`;
  rmSync(old, { recursive: true, force: true });
  const replaces = existsSync(folder);
  if (replaces) renameSync(folder, old);
  try {
    renameSync(partial, folder);
  } catch (error) {
    if (replaces) renameSync(old, folder);
    throw error;
  }
  rmSync(old, { recursive: true, force: true });
}

/** Puts a folder back that was set aside by a process that was killed before it could put the new one in its place. */
export function mendFolder(folder: string): void {
  const old = `${folder}.old`;
  if (existsSync(old) && !existsSync(folder)) renameSync(old, folder);
}

const reasons: Record<string, string> = {
  ENOSPC: 'the disk is full; make room and run the command again',
  EDQUOT: 'your share of the disk is used up; make room and run the command again',
  EACCES: 'you may not write here; choose another place with --out',
  EPERM: 'you may not write here; choose another place with --out',
  EROFS: 'this disk cannot be written to; choose another place with --out',
  ENOTDIR: 'a part of the path is a file, not a folder; choose another with --out',
  EEXIST: 'a part of the path is a file, not a folder; choose another with --out',
  // What Node makes of a folder that has to be made on a disk that cannot be written to.
  ENOENT: 'a folder on the way cannot be made; choose another place with --out',
  ENAMETOOLONG: 'the name is too long for this disk; choose another folder with --out',
  EBUSY: 'another program holds it; close that, and run the command again',
};

/** What is wrong with a folder, or a file, in words; anything that went wrong elsewhere as it is. */
export function diskTrouble(folder: string, error: unknown): unknown {
  const { code = '', path } = error as NodeJS.ErrnoException;
  const elsewhere = path !== undefined && !path.startsWith(folder) && !folder.startsWith(path);
  const what = elsewhere ? undefined : reasons[code];
  return what ? new UserMistake([{ file: folder, what }], { cause: error }) : error;
}

/** The text of a file, or nothing where there is none. */
export async function textIfThere(file: string): Promise<string | undefined> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code ?? '')) return undefined;
    throw error;
  }
}
