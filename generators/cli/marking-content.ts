import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { experiments } from '../experiments/index.ts';
import { type Scheme, readScheme } from '../marking/scheme.ts';
import type { MarkingWords } from '../marking/words.ts';
import { type Mistake, UserMistake } from '../mistake.ts';
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
  const scheme = readScheme(fromYaml(path), basename(path));
  const unknown = unknownNames(scheme);
  if (unknown.length > 0) throw new UserMistake(unknown.map((mistake) => ({ file: basename(path), ...mistake })));
  return scheme;
}

/** A name that nothing goes by would be passed over in silence, and other marks given than the teacher means. */
function unknownNames(scheme: Scheme): Mistake[] {
  const { plain, slips } = loadMarkingWords('en');
  const known = [...Object.keys(plain), ...Object.keys(slips)];
  const among = (field: string, names: readonly string[], all: readonly string[], what: string) =>
    names.filter((name) => !all.includes(name)).map((name) => ({ field, what: `there is no ${what} "${name}"${didYouMean(name, all)}` }));
  return [
    ...(['keep-method', 'keep-answer'] as const).flatMap((field) => among(field, scheme[field], known, 'slip')),
    ...among('experiments', Object.keys(scheme.experiments), Object.keys(experiments), 'experiment'),
  ];
}

function fromYaml(path: string): unknown {
  try {
    return parse(readFileSync(path, 'utf8'));
  } catch (cause) {
    throw new UserMistake([{ file: basename(path), what: `this is no YAML that can be read: ${(cause as Error).message.split('\n')[0]}` }], { cause });
  }
}
