import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { z } from 'zod';
import { UserMistake } from '../mistake.ts';
import { writeWhole } from '../press/write-whole.ts';

const usedSchema = z.strictObject({ format: z.literal('slidewire used questions 1'), questions: z.array(z.string()) });

/** Keys of questions that earlier papers asked; none where there is no file yet. */
export function readUsed(file: string | undefined): string[] {
  if (file === undefined || !existsSync(file)) return [];
  const read = usedSchema.safeParse(json(file));
  if (read.success) return read.data.questions;
  throw new UserMistake([{ file: basename(file), what: 'this is no list of used questions; name the file that an earlier paper wrote, or one that is not there yet' }]);
}

function json(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/** Writes the file with the questions of a paper added. */
export async function addUsed(file: string, before: readonly string[], more: readonly string[]): Promise<void> {
  const all: z.infer<typeof usedSchema> = { format: 'slidewire used questions 1', questions: [...new Set([...before, ...more])] };
  await writeWhole(file, `${JSON.stringify(all, null, 1)}\n`);
}
