import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { diskTrouble, textIfThere } from '../press/whole-folder.ts';
import { writeWhole } from '../press/write-whole.ts';
import { type Ledger, ledgerText, readLedger } from '../sheets/ledger.ts';

/** Where a pack keeps its ledger. */
export const ledgerOf = (folder: string) => join(folder, 'teacher', 'ledger.json');

/** The ledger in a file; undefined where there is no file. A UserMistake where it is broken. */
export async function ledgerIn(file: string): Promise<Ledger | undefined> {
  const text = await textIn(file);
  return text === undefined ? undefined : readLedger(text, file);
}

/** The text of a file; undefined where there is none. A UserMistake where it cannot be read. */
export async function textIn(file: string): Promise<string | undefined> {
  try {
    return await textIfThere(file);
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    const what = code === 'EISDIR' ? 'this is a folder, not a file; give another path' : `cannot be read (${code}); check whose it is`;
    throw new UserMistake([{ file, what }], { cause });
  }
}

/** Writes a ledger to a file of its own, whole or not at all, with the folders above it. */
export async function writeLedger(file: string, ledger: Ledger): Promise<void> {
  try {
    await mkdir(dirname(file), { recursive: true });
    await writeWhole(file, ledgerText(ledger));
  } catch (error) {
    throw diskTrouble(file, error);
  }
}
