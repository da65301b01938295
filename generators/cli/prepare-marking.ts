import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { blankAnswers } from '../marking/answers-file.ts';
import { columnsOf } from '../marking/columns.ts';
import type { Decimal } from '../marking/entry.ts';
import { headOf } from '../marking/heads.ts';
import type { Scheme } from '../marking/scheme.ts';
import { typingPage } from '../marking/typing-page.ts';
import type { Order } from '../order/schema.ts';
import { templates } from '../press/templates.ts';
import { type Issue, programOf } from '../sheets/issue.ts';
import { loadWords } from './content.ts';
import { USUAL_SCHEME, loadMarkingWords, loadScheme } from './marking-content.ts';

/** The answers file and the page for typing it, for sheets whose readings are known. */
export async function prepareMarking(folder: string, order: Order, issues: readonly Issue[], scheme: Scheme = loadScheme(USUAL_SCHEME), decimal: Decimal = 'point'): Promise<void> {
  if (order.readings === 'blank' || issues.length === 0) return;
  const experiment = experimentNamed(order.experiment);
  const words = loadMarkingWords(order.language);
  const { spoken, experiment: told } = loadWords(order.language, order.experiment);
  const columns = columnsOf(scheme, experiment, issues.map(({ sheet }) => sheet));
  if (columns.length === 0) return;
  const { symbols } = spoken;
  const page = typingPage(issues, ({ sheet }) => programOf(experiment, sheet), columns, scheme, symbols, words, decimal);
  const answers = columns.map((column) => headOf(column, symbols, words.heads));
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'answers.csv'), blankAnswers(issues, { columns, symbols, heads: words.heads, decimal }));
  await writeFile(join(folder, 'typing.html'), templates().render('marking/typing.njk', { lang: order.language, title: `${told.title}${order.title && ` · ${order.title}`}`, page, heads: words.heads, answers }));
}
