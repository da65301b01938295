import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { z } from 'zod';
import { parse } from 'yaml';
import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { familyNamed } from '../questions/index.ts';
import type { Form, PaperItem } from '../questions/paper.ts';

const FORMS = ['numeric', 'choice', 'structured'] as const;
const marks = z.record(z.string(), z.number().int().nonnegative());
const entry = z.looseObject({ family: z.string(), ask: z.string().optional(), form: z.enum(FORMS).default('numeric'), marks: z.number().int().positive().optional(), count: z.number().int().positive().max(50).default(1) });

/** A paper as it is asked for in its file. */
const paperFile = z.strictObject({
  title: z.string(),
  time: z.string().default(''),
  instructions: z.array(z.string()).optional(),
  versions: z.number().int().min(1).max(26).default(2),
  seed: z.coerce.string().optional(),
  used: z.string().optional(),
  sd: z.enum(['sample', 'population']).default('sample'),
  paper: z.enum(['A4', 'Letter']).default('A4'),
  size: z.enum(['normal', '18pt', '24pt']).default('normal'),
  marks: z.strictObject({ total: z.number().int().positive().optional(), topics: marks.optional(), levels: marks.optional(), forms: marks.optional() }).default({}),
  questions: z.array(entry).min(1),
});

export type PaperFile = z.infer<typeof paperFile> & { items: PaperItem[] };

/** Reads a paper file; UserMistake with everything that is wrong in it. */
export function readPaperFile(path: string): PaperFile {
  const file = basename(path);
  const read = paperFile.safeParse(content(path, file));
  if (!read.success) throw new UserMistake(read.error.issues.map(({ path: field, message }) => ({ file, field: field.map((part) => (typeof part === 'number' ? part + 1 : String(part))).join(' '), what: message })));
  return { ...read.data, items: read.data.questions.flatMap((one, place) => itemsOf(one, { file, field: `questions ${place + 1}` }, read.data.sd)) };
}

function content(path: string, file: string): unknown {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (cause) {
    throw new UserMistake([{ file, what: 'there is no such file, or it cannot be read; check the path' }], { cause });
  }
  try {
    return parse(text) as unknown;
  } catch (cause) {
    throw new UserMistake([{ file, what: `this is not YAML: ${(cause as Error).message.split('\n')[0]}` }], { cause });
  }
}

function itemsOf({ family: id, ask, form, marks: points, count, ...rest }: z.infer<typeof entry>, place: { file: string; field: string }, sd: string): PaperItem[] {
  const family = named(id, place);
  const choices = family.choices ?? {};
  for (const [name, value] of Object.entries(rest)) {
    if (!Object.hasOwn(choices, name)) throw new UserMistake([{ ...place, what: `${id} has no choice "${name}"${didYouMean(name, ['ask', 'form', 'marks', 'count', ...Object.keys(choices)])}` }]);
    if (!choices[name]!.includes(String(value))) throw new UserMistake([{ ...place, what: `${name}: "${String(value)}" is none of ${choices[name]!.join(', ')}${didYouMean(String(value), choices[name]!)}` }]);
  }
  const choice = { ...(Object.hasOwn(choices, 'sd') && { sd }), ...Object.fromEntries(Object.entries(rest).map(([name, value]) => [name, String(value)])) };
  const item: PaperItem = { family, choice, form: form as Form, ...(ask !== undefined && { direction: ask }), ...(points !== undefined && { marks: points }) };
  return Array.from({ length: count }, () => item);
}

function named(id: string, place: { file: string; field: string }) {
  try {
    return familyNamed(id);
  } catch (error) {
    if (error instanceof UserMistake) throw new UserMistake(error.mistakes.map(({ what }) => ({ ...place, what })));
    throw error;
  }
}
