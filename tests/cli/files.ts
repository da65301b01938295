import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Every file below a folder by its path from there, with the SHA-256 of what it holds. */
export function filesIn(folder: string): Record<string, string> {
  const all = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
  const paths = all.map(({ parentPath, name }) => join(parentPath, name)).sort();
  const hash = (path: string) => createHash('sha256').update(readFileSync(path)).digest('hex');
  return Object.fromEntries(paths.map((path) => [path.slice(folder.length + 1).replaceAll('\\', '/'), hash(path)]));
}
