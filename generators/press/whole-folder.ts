import { mkdir, readFile, rename, rm } from 'node:fs/promises';
import { UserMistake } from '../mistake.ts';

/**
 * Fills a folder that appears whole or not at all: `fill` writes into DIR.partial, which then takes the place of DIR.
 * After a failure or a stop DIR is what it was before.
 */
export async function wholeFolder(folder: string, fill: (partial: string) => Promise<void>): Promise<void> {
  const partial = `${folder}.partial`;
  const clear = () => rm(partial, { recursive: true, force: true });
  try {
    await clear();
    await mkdir(partial, { recursive: true });
    await fill(partial);
    await replace(folder, partial);
  } catch (error) {
    await clear().catch(() => undefined);
    throw inWords(folder, error);
  }
}

async function replace(folder: string, partial: string): Promise<void> {
  const old = `${folder}.old`;
  await rm(old, { recursive: true, force: true });
  await rename(folder, old).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ENOENT') throw error;
  });
  await rename(partial, folder);
  await rm(old, { recursive: true, force: true });
}

const reasons: Record<string, string> = {
  ENOSPC: 'the disk is full; make room and run the command again',
  EDQUOT: 'your share of the disk is used up; make room and run the command again',
  EACCES: 'you may not write here; choose another folder with --out',
  EPERM: 'you may not write here; choose another folder with --out',
  EROFS: 'this disk cannot be written to; choose another folder with --out',
  ENOTDIR: 'a part of the path is a file, not a folder; choose another with --out',
  EEXIST: 'there is a file of that name; choose another folder with --out',
};

function inWords(folder: string, error: unknown): unknown {
  const what = reasons[(error as NodeJS.ErrnoException).code ?? ''];
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
