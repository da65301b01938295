import { randomBytes } from 'node:crypto';
import { rename, rm, writeFile } from 'node:fs/promises';

/** Writes a file so that it is there whole or not at all: beside its place first, then renamed. */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const partial = `${file}.${randomBytes(6).toString('hex')}.partial`;
  try {
    await writeFile(partial, content, { flag: 'wx' });
    await rename(partial, file);
  } catch (error) {
    await rm(partial, { force: true });
    throw error;
  }
}
