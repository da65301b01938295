import { rmSync } from 'node:fs';
import { mkdir, mkdtemp, stat } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import type { Environment } from './places.ts';

/**
 * A folder into which nobody else can put a program: `slidewire` in the user's cache folder
 * (XDG Base Directory Specification: XDG_CACHE_HOME where absolute, else ~/.cache), mode 0700;
 * where that cannot be had, a temporary one that goes when the process ends.
 */
export async function privateFolder(env: Environment): Promise<string> {
  const cache = env.XDG_CACHE_HOME;
  const folder = join(cache && isAbsolute(cache) ? cache : join(env.HOME ?? homedir(), '.cache'), 'slidewire');
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    return (await isOursAlone(folder)) ? folder : await passingFolder();
  } catch {
    return passingFolder();
  }
}

async function isOursAlone(folder: string): Promise<boolean> {
  const { uid, mode } = await stat(folder);
  return uid === process.getuid?.() && (mode & 0o022) === 0;
}

async function passingFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'slidewire-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
