import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Order } from '../order/schema.ts';
import { type Press, openPress } from '../press/print.ts';
import type { Issue } from '../sheets/issue.ts';
import { type Ledger, ledgerJsonSchema, ledgerText } from '../sheets/ledger.ts';
import type { Tables } from '../sheets/tables.ts';
import { loadWords } from './content.ts';
import type { printPack } from './pack-files.ts';
import { type Progress, progress, silent } from './progress.ts';
import { ledgerOf } from './record-file.ts';

interface Fill {
  /** Where the pack is to be, or is already. */
  folder: string;
  /** The folder to be filled. */
  partial: string;
  order: Order;
  tables: Tables;
  ledger: Ledger;
}

/** Fills the folder of a pack with all that its ledger issues. */
export async function fillPack(fill: Fill): Promise<void> {
  await writeRecord(fill);
  const printed = withPress(async (printer) => {
    await print(fill, printer, fill.partial, fill.ledger.issues.filter(({ sitting }) => sitting === 1), progress());
    await printFurther(fill, printer, fill.ledger.issues);
  });
  await bothEnded(printed, prepare(fill, []));
}

/** Fills the folder with a grown ledger and these further sets alone. */
export async function fillFurther(fill: Fill, issues: readonly Issue[]): Promise<void> {
  await writeRecord(fill);
  await bothEnded(withPress((printer) => printFurther(fill, printer, issues)), prepare(fill, issues));
}

/** What marking starts from is made ready while the browser works. */
async function prepare({ folder, partial, order, ledger }: Fill, further: readonly Issue[]): Promise<void> {
  const { prepareAgain } = await import('./prepare-marking.ts');
  await prepareAgain(join(folder, 'teacher'), join(partial, 'teacher'), { order, issues: ledger.issues }, further);
}

/** Nothing goes on being written after a failure, when the folder is cleared away. */
async function bothEnded(...work: Promise<void>[]): Promise<void> {
  for (const ended of await Promise.allSettled(work)) if (ended.status === 'rejected') throw ended.reason;
}

async function writeRecord({ partial, ledger }: Fill): Promise<void> {
  await mkdir(join(partial, 'teacher'), { recursive: true });
  await writeFile(ledgerOf(partial), ledgerText(ledger));
  await writeFile(join(partial, 'teacher', 'ledger.schema.json'), `${JSON.stringify(ledgerJsonSchema(), null, 1)}\n`);
}

/** A browser that runs, and what lays out the documents for it. */
interface Printer {
  press: Press;
  printPack: typeof printPack;
}

/** The browser starts while the part of the program that lays out is loaded. */
async function withPress(work: (printer: Printer) => Promise<void>): Promise<void> {
  const [opened, loaded] = await Promise.allSettled([openPress({ workers: 2 }), import('./pack-files.ts')]);
  if (opened.status === 'rejected') throw opened.reason;
  const press = opened.value;
  try {
    if (loaded.status === 'rejected') throw loaded.reason;
    await work({ press, printPack: loaded.value.printPack });
  } finally {
    await press.close();
  }
}

async function print({ order, tables }: Fill, { press, printPack }: Printer, folder: string, issues: Issue[], told: Progress): Promise<void> {
  for (const whose of ['students', 'teacher']) await mkdir(join(folder, whose, 'single'), { recursive: true });
  await printPack({ partial: folder, press, order, tables, issues, words: loadWords(order.language, order.experiment), progress: told });
}

/** Where the documents of a pack of one student go, of those that are made. */
const FURTHER = [
  { from: ['students', 'single'], begins: 'worksheet', to: ['students', 'again', 'worksheet'] },
  { from: ['teacher', 'single'], begins: 'key', to: ['teacher', 'again', 'key'] },
  { from: ['teacher'], begins: 'solutions', to: ['teacher', 'again', 'solution'] },
  { from: ['teacher'], begins: 'cards', to: ['teacher', 'again', 'cards'] },
];

/** Prints the sets of later sittings, each as a pack of its own whose documents are then put among the others. */
async function printFurther(fill: Fill, printer: Printer, issues: readonly Issue[]): Promise<void> {
  const own = join(fill.partial, 'further');
  for (const issue of issues) {
    if (issue.sitting === 1) continue;
    await print(fill, printer, own, [issue], silent);
    for (const { from, begins, to } of FURTHER) {
      const made = (await readdir(join(own, ...from))).find((name) => name.startsWith(begins));
      if (made !== undefined) await put(join(own, ...from, made), `${join(fill.partial, ...to)}-${further(issue, fill.ledger)}.pdf`);
    }
    await rm(own, { recursive: true });
  }
}

async function put(from: string, to: string): Promise<void> {
  await mkdir(join(to, '..'), { recursive: true });
  await rename(from, to);
}

/** Its number in the ledger makes a name its own; of the roll stands there what is safe in a path: '31-roll-7-sitting-2'. */
function further({ roll, sitting }: Issue, { issues }: Ledger): string {
  const number = issues.findIndex((each) => each.roll === roll && each.sitting === sitting) + 1;
  const safe = roll.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 20);
  return `${number}${safe === '' ? '' : `-roll-${safe}`}-sitting-${sitting}`;
}
