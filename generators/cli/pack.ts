import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import type { Flags } from '../order/flags.ts';
import { openPress } from '../press/print.ts';
import { mendFolder, textIfThere, wholeFolder } from '../press/whole-folder.ts';
import { issueSheets } from '../sheets/issue.ts';
import { type Ledger, ledgerJsonSchema, orderDigest, readLedger } from '../sheets/ledger.ts';
import { type Asked, readAsked } from './asked.ts';
import type { Command } from './command.ts';
import { loadWords } from './content.ts';
import { orderHelp } from './help.ts';
import { printPack } from './pack-files.ts';
import { progress } from './progress.ts';
import { planWires } from './wires.ts';

const OUT = { name: 'out', many: false, takes: 'the path of a folder that is not there yet, or of a pack of the same order', meaning: 'the folder for the pack' };

export const pack: Command = {
  usage: 'pack ORDER.yaml --out DIR',
  about: 'a different worksheet for every student of a class list, with matching keys, in print',
  help: () => orderHelp(pack, [OUT]),
  async run(args) {
    const asked = readAsked(args, [OUT]);
    const folder = resolve(outFolder(asked.flags['out']));
    if (asked.students.length === 0) throw new UserMistake('no class list; name one in the order (class: class.csv) or with --class class.csv');
    for (const notice of asked.notices) process.stderr.write(`${notice}\n`);
    const { refused } = planWires(asked);
    if (refused.length > 0) throw new UserMistake(refused);
    const ledger = await ledgerFor(folder, asked);
    tellSecrecy(ledger);
    await wholeFolder(folder, (partial) => fill(partial, asked, ledger));
    process.stdout.write(`${summary(folder, ledger)}\n`);
  },
};

function outFolder(out: Flags[string]): string {
  if (typeof out !== 'string' || out === '') throw new UserMistake('say where the pack goes: --out DIR');
  return out;
}

/** A pack that is made again keeps its ledger, so that the sheets stay those that were handed out. */
async function ledgerFor(folder: string, asked: Asked): Promise<Ledger> {
  mendFolder(folder);
  const text = await textIfThere(join(folder, 'teacher', 'ledger.json'));
  const kept = text === undefined ? undefined : readLedger(text);
  if (kept?.orderDigest === orderDigest(asked.order, asked.students)) return kept;
  if (existsSync(folder)) {
    throw new UserMistake([{ file: folder, what: 'the folder is there and holds no pack of this order and class; choose another with --out, or remove it' }]);
  }
  return newLedger(asked);
}

/** The chosen seed makes a practice pack; without one, 128 random bits make an assessed one. */
function newLedger({ order, students, tables }: Asked): Ledger {
  const secret = order.seed ?? Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('hex');
  const issues = issueSheets({ order, experiment: experimentNamed(order.experiment), tables, secret }, students);
  return { format: 1, kind: order.seed === undefined ? 'assessed' : 'practice', secret, orderDigest: orderDigest(order, students), order, issues };
}

function tellSecrecy({ kind, secret }: Ledger): void {
  if (kind === 'practice') process.stderr.write(`A practice pack: whoever knows or guesses the seed "${secret}" can make its keys. Leave out the seed for work that counts.\n`);
}

async function fill(partial: string, asked: Asked, ledger: Ledger): Promise<void> {
  await mkdir(join(partial, 'students', 'single'), { recursive: true });
  await mkdir(join(partial, 'teacher', 'single'), { recursive: true });
  await writeFile(join(partial, 'teacher', 'ledger.json'), `${JSON.stringify(ledger, null, 1)}\n`);
  await writeFile(join(partial, 'teacher', 'ledger.schema.json'), `${JSON.stringify(ledgerJsonSchema(), null, 1)}\n`);
  const press = await openPress({ workers: 2 });
  try {
    await printPack({ partial, press, order: asked.order, tables: asked.tables, issues: ledger.issues, words: loadWords(asked.order.language, asked.order.experiment), progress: progress() });
  } finally {
    await press.close();
  }
}

function summary(folder: string, { issues }: Ledger): string {
  const close = issues.filter(({ shared }) => shared.length > 0).length;
  return [
    `${issues.length} student${issues.length === 1 ? '' : 's'}. For the students: ${join(folder, 'students')}`,
    `For the teacher alone: ${join(folder, 'teacher')}`,
    ...(close > 0 ? [`${close} of the sheets share a right answer with another; ledger.json says which.`] : []),
  ].join('\n');
}
