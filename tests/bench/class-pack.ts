import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { knownNames, loadTables, loadWords } from '../../generators/cli/content.ts';
import { type PackWork, printPack } from '../../generators/cli/pack-files.ts';
import { silent } from '../../generators/cli/progress.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import type { Press } from '../../generators/press/print.ts';
import { issueSheets } from '../../generators/sheets/issue.ts';

/** The demo's order for a class of another size. */
export interface ClassFiles {
  order: string;
  class: string;
}

const demo = readFileSync(new URL('../../content/demo/order.yaml', import.meta.url), 'utf8');

export function writeClass(folder: string, students: number, more = ''): ClassFiles {
  const files = { order: join(folder, 'order.yaml'), class: join(folder, 'class.csv') };
  writeFileSync(files.order, `${demo}${more}`);
  writeFileSync(files.class, `roll,name\n${names(students).map(({ roll, name }) => `${roll},${name}\n`).join('')}`);
  return files;
}

const names = (students: number) => Array.from({ length: students }, (_, i) => ({ roll: String(i + 1), name: `Student ${i + 1}` }));

/** All that printing the same class's pack takes, but where it goes. */
export function classWork(students: number, more = ''): Omit<PackWork, 'press' | 'partial'> {
  const tables = loadTables();
  const order = readOrder(`${demo}${more}`, 'order.yaml', knownNames(tables));
  const issues = issueSheets({ order, experiment: experimentNamed(order.experiment), tables, secret: order.seed! }, names(students));
  return { order, tables, issues, words: loadWords(order.language, order.experiment), progress: silent };
}

/** Lays out a pack and hands each finished document over, as if it were printed on so many pages. */
export async function layOut(work: Omit<PackWork, 'press' | 'partial'>, take: (html: string, file: string) => void): Promise<void> {
  const press: Partial<Press> = {
    print: async (html, file) => {
      take(html, file);
      return { pages: 4 };
    },
  };
  await printPack({ ...work, partial: '', press: press as Press });
}
