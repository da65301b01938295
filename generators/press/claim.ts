import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { dirname, join } from 'node:path';
import { UserMistake } from '../mistake.ts';

/** Says inside a folder which process fills it. */
const HOLDER = '.held-by';

/**
 * Makes an empty folder that this process alone fills. What a killed process left there is cleared away; two at once
 * would mix the sheets of one with the keys of the other.
 * @throws UserMistake where another process of this machine is filling it
 */
export async function claim(folder: string): Promise<void> {
  await mkdir(dirname(folder), { recursive: true });
  // Marked before it gets its name, so that nobody finds it unmarked.
  const own = await mkdtemp(`${folder}.`);
  try {
    await writeFile(join(own, HOLDER), JSON.stringify({ host: hostname(), pid: process.pid }));
    await rename(own, folder).catch(async (error) => {
      if (!existsSync(folder)) throw error;
      const pid = await liveHolder(folder);
      if (pid !== undefined) throw new UserMistake([{ file: folder, what: `process ${pid} is filling this folder; wait for it, or choose another with --out. If it has nothing to do with Slidewire, remove ${folder}` }]);
      await rm(folder, { recursive: true, force: true });
      await rename(own, folder);
    });
  } finally {
    await rm(own, { recursive: true, force: true });
  }
}

/** Takes the mark off a folder that is full. */
export async function release(folder: string): Promise<void> {
  await rm(join(folder, HOLDER));
}

/** The process that fills the folder; undefined where it is gone, or cannot be known because it ran elsewhere. */
async function liveHolder(folder: string): Promise<number | undefined> {
  const { host, pid } = await readFile(join(folder, HOLDER), 'utf8').then(JSON.parse).catch(() => ({})) as { host?: string; pid?: number };
  return host === hostname() && pid !== undefined && pid !== process.pid && runs(pid) ? pid : undefined;
}

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
