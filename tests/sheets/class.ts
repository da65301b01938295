import { knownNames, loadTables, loadWords } from '../../generators/cli/content.ts';
import { makePrinter, type PackWork, printPack } from '../../generators/cli/pack-files.ts';
import { silent } from '../../generators/cli/progress.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import type { Order } from '../../generators/order/schema.ts';
import type { Press } from '../../generators/press/print.ts';
import { type Issue, type Recipient, issueSheets } from '../../generators/sheets/issue.ts';

export const tables = loadTables();
export const known = knownNames(tables);

/** 128 bits, as an assessed pack has. */
export const SECRET = '7c1e09b35fd2468aa0e4d7136b92f85c';

/** Names and rolls that stand nowhere else on a sheet. */
export const STUDENTS: Recipient[] = [
  { roll: 'Q17-88', name: 'Perrin Oakhollow' },
  { roll: 'Q23-41', name: 'Sabra Lintwick' },
  { roll: 'Q35-09', name: 'Yorick Embleton-Vane' },
];

const WIRES = 'wires: ["constantan, SWG 28, 60 cm", "manganin, SWG 30, 55 cm", "nichrome, SWG 26, 45 cm"]\n';

export function orderOf(more = ''): Order {
  return readOrder(WIRES + more, 'order.yaml', known);
}

export function issuesOf(order: Order, students: readonly Recipient[] = STUDENTS, secret = SECRET): Issue[] {
  return issueSheets({ order, experiment: experimentNamed(order.experiment), tables, secret }, students);
}

/** Every document of a pack by its file, as the press receives it. */
export async function documentsOf(order: Order, issues: Issue[], only?: 'worksheet'): Promise<Map<string, string>> {
  const documents = new Map<string, string>();
  const press = {
    print: async (html: string, file: string) => {
      documents.set(file, html);
      return { pages: 4 };
    },
  } as Partial<Press> as Press;
  const work: PackWork = { partial: 'pack', press, order, tables, issues, words: loadWords(order.language, order.experiment), progress: silent };
  if (only) await makePrinter(work).print([{ kind: only, together: 'students/worksheets', single: 'students/single/worksheet' }]);
  else await printPack(work);
  return documents;
}

/** What a reader, a screen reader or a link can get out of a document: its text and the attributes that hold words. */
export function wordsOf(html: string): string {
  const shown = html.replace(/<style[^]*?<\/style>/g, ' ');
  const attributes = [...shown.matchAll(/\s(?:aria-[\w-]+|alt|title|id|class|href|lang|value|content|data-[\w-]+)="([^"]*)"/g)].map(([, value]) => value);
  const metadata = [...html.matchAll(/content:\s*("[^"]*")/g)].map(([, text]) => text);
  return [...attributes, ...metadata, shown.replace(/<[^>]*>/g, ' ')].join(' ').normalize('NFKC');
}
