import { experimentNamed } from '../../generators/experiments/index.ts';
import { printPack } from '../../generators/cli/pack-files.ts';
import { knownNames, loadTables, loadWords } from '../../generators/cli/content.ts';
import { silent } from '../../generators/cli/progress.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import type { Press } from '../../generators/press/print.ts';
import { type Recipient, issueSheets } from '../../generators/sheets/issue.ts';

export const STUDENTS: Recipient[] = [
  { roll: '1', name: 'Perrin Oakhollow' },
  { roll: '2', name: '<b>Ada & "Bo"</b>' },
  { roll: '3', name: 'अनिका वेदराज' },
];

const WIRES = 'wires: ["constantan, SWG 28, 60 cm", "nichrome, SWG 26, 45 cm"]\n';

/** Every HTML document of a pack, by the file it would be printed to: the very text that the press receives. An experiment that is named has its usual wires. */
export async function packHtml(more: string, students: readonly Recipient[] = STUDENTS): Promise<Map<string, string>> {
  const tables = loadTables();
  const wires = more.includes('experiment:') ? '' : WIRES;
  const order = readOrder(`${wires}seed: pages\n${more}`, 'order.yaml', knownNames(tables));
  const issues = issueSheets({ order, experiment: experimentNamed(order.experiment), tables, secret: 'pages' }, students);
  const documents = new Map<string, string>();
  const press = {
    print: (html: string, file: string) => {
      documents.set(file, html);
      return Promise.resolve({ pages: 4 });
    },
  } as unknown as Press;
  await printPack({ partial: 'pack', press, order, tables, issues, words: loadWords(order.language, order.experiment), progress: silent });
  return documents;
}
