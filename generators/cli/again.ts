import { join, resolve } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { checkOrder, fieldName } from '../order/check.ts';
import type { Flags } from '../order/flags.ts';
import type { Order } from '../order/schema.ts';
import { type WireAsk, readWireAsk } from '../order/wire-ask.ts';
import { mendFolder, wholeFolder } from '../press/whole-folder.ts';
import { type Recipient, issueSheets } from '../sheets/issue.ts';
import { type Ledger, addIssues } from '../sheets/ledger.ts';
import { needed, tellSecrecy } from './class-order.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import { knownNames, loadTables } from './content.ts';
import { fillFurther } from './fill.ts';
import { ledgerIn, ledgerOf } from './record-file.ts';
import { planWires } from './wires.ts';

export const AGAIN: Flag = {
  name: 'again',
  many: true,
  takes: 'the roll of a student in the pack that --out names; no order beside it',
  meaning: 'one more set for a student who missed the practical or sits it again, on the same wire or on that of --wire',
};

const FLAGS: readonly Flag[] = [
  AGAIN,
  { name: 'out', many: false, takes: 'the folder of the pack', meaning: 'the pack' },
  { name: 'wire', many: false, takes: 'a wire', meaning: 'the wire for the further set' },
];

export const isAgain = (args: readonly string[]) => args.some((each) => /^--again(=|$)/.test(each));

/** Adds a set for each student named to a pack that is there; the rest of the pack stays as it is. */
export async function packAgain(args: string[]): Promise<void> {
  const { flags, positionals } = readCommandLine(args, FLAGS);
  const rolls = [flags['again'] ?? []].flat();
  if (positionals.length > 0) throw new UserMistake(`--again takes the order from the ledger of the pack; leave out ${positionals.map((each) => `"${each}"`).join(', ')}`);
  const folder = resolve(needed(flags['out'], 'say which pack the sheets are added to: --out DIR'));
  mendFolder(folder);
  const ledger = await wholeLedger(folder);
  const tables = loadTables();
  const known = knownNames(tables);
  const order = checkOrder(ledger.order, known, (path) => ({ file: ledgerOf(folder), field: `order.${fieldName(path)}` }));
  const wire = anotherWire(flags, order);
  const recipients = readRolls(rolls, ledger).map((roll) => further(roll, ledger, wire, (same) => readWireAsk(same, known)));
  const issues = issueSheets({ order, experiment: experimentNamed(order.experiment), tables, secret: ledger.secret }, recipients, ledger.issues);
  const grown = addIssues(ledger, issues);
  tellSecrecy(grown);
  await wholeFolder(folder, (partial) => fillFurther({ folder, partial, order, tables, ledger: grown }, issues));
  for (const { roll, sitting, code } of issues) process.stdout.write(`Roll ${roll}, sitting ${sitting}: sheet ${code}\n`);
  process.stdout.write(`For the students: ${join(folder, 'students', 'again')}\nFor the teacher alone: ${join(folder, 'teacher', 'again')}\n`);
}

/** A further set has to stand apart from all sheets of the class, so a part of them is not enough. */
async function wholeLedger(folder: string): Promise<Ledger> {
  const ledger = await ledgerIn(ledgerOf(folder));
  if (!ledger) throw new UserMistake([{ file: folder, what: 'holds no pack (there is no teacher/ledger.json in it); give the folder of one with --out' }]);
  if (!ledger.part) return ledger;
  const { number, of } = ledger.part;
  throw new UserMistake([{ file: folder, what: `holds part ${number} of ${of} alone; join the ledgers of all parts (slidewire join LEDGER … --out PACK/teacher/ledger.json), then give PACK with --out` }]);
}

function readRolls(rolls: readonly string[], { issues }: Ledger): readonly string[] {
  const all = [...new Set(issues.map(({ roll }) => roll))];
  const mistakes = rolls.flatMap((roll, i) => {
    if (!all.includes(roll)) return [{ field: '--again', what: `there is no roll ${roll} in this pack${didYouMean(roll, all)}` }];
    return rolls.indexOf(roll) < i ? [{ field: '--again', what: `roll ${roll} is given twice; give it once` }] : [];
  });
  if (mistakes.length > 0) throw new UserMistake(mistakes);
  return rolls;
}

function further(roll: string, { issues }: Ledger, another: WireAsk | undefined, wireOf: (same: string) => WireAsk): Recipient {
  const own = issues.filter((issue) => issue.roll === roll);
  const { name, wires } = own.at(-1)!;
  const [wire, ...others] = wires.map(wireOf);
  return { roll, name, wire: another ?? wire!, others, sitting: Math.max(...own.map(({ sitting }) => sitting)) + 1 };
}

/** The wire of --wire, if it is given and can be used. */
function anotherWire(flags: Flags, order: Order): WireAsk | undefined {
  if (flags['wire'] === undefined) return undefined;
  const tables = loadTables();
  const known = knownNames(tables);
  const wire = readWireAsk(String(flags['wire']), known);
  const { refused } = planWires({ order: { ...order, wires: [wire] }, students: [], notices: [], tables, known, files: {}, flags });
  if (refused.length > 0) throw new UserMistake(refused);
  return wire;
}
