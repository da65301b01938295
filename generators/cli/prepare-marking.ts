import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { blankAnswers } from '../marking/answers-file.ts';
import { columnsOf } from '../marking/columns.ts';
import { grownAnswers } from '../marking/grown-answers.ts';
import type { Scheme } from '../marking/scheme.ts';
import type { Order } from '../order/schema.ts';
import { type Typing, typingData } from '../practice/typing/make-data.ts';
import { templates } from '../press/templates.ts';
import { fill } from '../quantities/spoken.ts';
import type { Issue } from '../sheets/issue.ts';
import { loadWords } from './content.ts';
import { USUAL_SCHEME, loadMarkingWords, loadScheme } from './marking-content.ts';
import { typingScript } from './typing-script.ts';

/** Sheets to be marked, and how. */
export interface ToMark {
  order: Order;
  issues: readonly Issue[];
  scheme?: Scheme;
}

const ANSWERS = 'answers.csv';

/** The answers file and the page for typing it, for sheets whose readings are known. */
export async function prepareMarking(folder: string, toMark: ToMark): Promise<void> {
  const typing = typingOf(toMark);
  if (!typing) return;
  await writeTyping(folder, toMark.order, typing);
  await writeFile(join(folder, ANSWERS), blankAnswers(typing.issues, layoutOf(typing)));
}

/**
 * The same in a pack that is there already, made anew in another place: what a teacher has typed into its answers file
 * stays, and rows for further sheets are added to it. Says so where they cannot be.
 */
export async function prepareAgain(folder: string, made: string, toMark: ToMark, further: readonly Issue[] = []): Promise<void> {
  const before = join(folder, ANSWERS);
  if (!existsSync(before)) return prepareMarking(made, toMark);
  const typing = typingOf(toMark);
  if (!typing) return;
  await writeTyping(made, toMark.order, typing);
  if (further.length === 0) return;
  const grown = grownAnswers(await readFile(before), further, layoutOf(typing));
  if (grown !== undefined) await writeFile(join(made, ANSWERS), grown);
  else process.stderr.write(`${before} is no answers file that rows can be added to, and stays as it is; slidewire mark ${join(folder, 'ledger.json')} --out DIR makes a new one with all sheets\n`);
}

function typingOf({ order, issues, scheme = loadScheme(USUAL_SCHEME) }: ToMark): Typing | undefined {
  if (order.readings === 'blank' || issues.length === 0) return undefined;
  const experiment = experimentNamed(order.experiment);
  const columns = columnsOf(scheme, experiment, issues.map(({ sheet }) => sheet));
  if (columns.length === 0) return undefined;
  const { symbols } = loadWords(order.language, order.experiment).spoken;
  return { experiment, issues, columns, scheme, decimal: order.decimal, symbols, words: loadMarkingWords(order.language) };
}

const layoutOf = ({ columns, symbols, words, decimal }: Typing) => ({ columns, symbols, heads: words.heads, decimal });

async function writeTyping(folder: string, order: Order, typing: Typing): Promise<void> {
  const { words, scheme } = typing;
  const { data, programs } = typingData(typing);
  const script = await typingScript(programs);
  const told = loadWords(order.language, order.experiment).experiment;
  const isTyped = scheme.units === 'typed';
  const page = templates().render('marking/typing.njk', {
    lang: order.language,
    title: `${told.title}${order.title && ` · ${order.title}`}`,
    scheme: fill(words.class.scheme, { scheme: scheme.title }),
    words: words.typing,
    lead: isTyped ? words.typing.lead : words.typing.leadAssumed,
    keys: [...words.typing.keys, ...(isTyped ? words.typing.keysTyped : words.typing.keysAssumed)],
    labels: words.feedback,
    answers: data.heads.slice(3),
    // No text of ours can end the element that it stands in.
    data: JSON.stringify(data).replaceAll('<', '\\u003c'),
    script,
    digest: createHash('sha256').update(script).digest('base64'),
  });
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'typing.html'), page);
}
