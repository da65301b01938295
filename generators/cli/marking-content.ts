import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { type Scheme, readScheme } from '../marking/scheme.ts';
import type { MarkingWords } from '../marking/words.ts';
import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';

const folder = fileURLToPath(new URL('../../content/', import.meta.url));

/** The scheme of a pack's ready-made answers file, and of marking where none is named. */
export const USUAL_SCHEME = 'practical';

export function loadMarkingWords(language: string): MarkingWords {
  return parse(readFileSync(`${folder}${language}/marking.yaml`, 'utf8')) as MarkingWords;
}

/** Mark schemes that come with the program. */
export function schemeNames(): string[] {
  return readdirSync(`${folder}marks`).flatMap((file) => (file.endsWith('.yaml') ? [file.slice(0, -'.yaml'.length)] : []));
}

/** A scheme by its name, or one of the teacher's own by its path. */
export function loadScheme(named: string): Scheme {
  if (schemeNames().includes(named)) return readScheme(parse(readFileSync(`${folder}marks/${named}.yaml`, 'utf8')), `${named}.yaml`);
  const path = resolve(named);
  if (!existsSync(path)) throw new UserMistake([{ field: '--scheme', what: `"${named}" is neither a file nor one of ${schemeNames().join(', ')}${didYouMean(named, schemeNames())}` }]);
  return readScheme(fromYaml(path), basename(path));
}

function fromYaml(path: string): unknown {
  try {
    return parse(readFileSync(path, 'utf8'));
  } catch (cause) {
    throw new UserMistake([{ file: basename(path), what: `this is no YAML that can be read: ${(cause as Error).message.split('\n')[0]}` }], { cause });
  }
}
