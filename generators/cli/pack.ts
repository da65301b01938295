import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { spareMemory } from '../press/spare-memory.ts';
import { mendFolder, wholeFolder } from '../press/whole-folder.ts';
import { type Ledger, orderDigest } from '../sheets/ledger.ts';
import { type Part, partOf } from '../sheets/part.ts';
import { AGAIN, isAgain, packAgain } from './again.ts';
import type { Asked } from './asked.ts';
import { issueLedger, needed, readClassOrder, tellSecrecy } from './class-order.ts';
import type { Command } from './command.ts';
import { fillPack } from './fill.ts';
import { orderHelp } from './help.ts';
import { ledgerIn, ledgerOf } from './record-file.ts';
import { SHARD, readShard } from './shard.ts';

const OUT = { name: 'out', many: false, takes: 'the path of a folder that is not there yet, or of a pack of the same order', meaning: 'the folder for the pack' };
const LEDGER = { name: 'ledger', many: false, takes: 'the path of a ledger of the same order and class', meaning: 'prints what was issued before, by slidewire issue or in another pack' };
const FLAGS = [OUT, LEDGER, SHARD, AGAIN];

export const pack: Command = {
  usage: 'pack ORDER.yaml --out DIR\nslidewire pack --again ROLL --out DIR',
  about: 'a different worksheet for every student of a class list, with matching keys, in print; or one more for a student',
  help: () => orderHelp(pack, FLAGS),
  async run(args) {
    if (isAgain(args)) return packAgain(args);
    const asked = readClassOrder(args, FLAGS);
    spareMemory(asked.students.length);
    const folder = resolve(needed(asked.flags['out'], 'say where the pack goes: --out DIR'));
    const ledger = await ledgerFor(folder, asked);
    tellSecrecy(ledger);
    await wholeFolder(folder, (partial) => fillPack({ folder, partial, order: asked.order, tables: asked.tables, ledger }));
    process.stdout.write(`${summary(folder, ledger)}\n`);
  },
};

/** A pack that is made again keeps its ledger, so that the sheets stay those that were handed out. */
async function ledgerFor(folder: string, asked: Asked): Promise<Ledger> {
  mendFolder(folder);
  const part = readShard(asked.flags['shard'], asked.students.length);
  const given = await givenLedger(asked);
  const kept = await ledgerIn(ledgerOf(folder));
  if (kept && isFor(asked, kept) && samePart(kept, part) && (given?.secret ?? kept.secret) === kept.secret) return kept;
  if (existsSync(folder)) {
    const wanted = `${part ? `part ${part.number} of ${part.of}` : 'pack'} of this order and class${given ? ' from this ledger' : ''}`;
    throw new UserMistake([{ file: folder, what: `the folder is there and holds no ${wanted}; choose another with --out, or remove it` }]);
  }
  const whole = given ?? issueHere(asked, part);
  return part ? partOf(whole, part) : whole;
}

const isFor = ({ order, students }: Asked, ledger: Ledger) => ledger.orderDigest === orderDigest(order, students);

const samePart = ({ part: kept }: Ledger, part: Part | undefined) => kept?.number === part?.number && kept?.of === part?.of;

async function givenLedger(asked: Asked): Promise<Ledger | undefined> {
  const value = asked.flags['ledger'];
  if (value === undefined) return undefined;
  const file = String(value);
  const refuse = (what: string) => new UserMistake([{ file, what }]);
  const ledger = await ledgerIn(resolve(file));
  if (!ledger) throw refuse('there is no such file; check the path');
  if (!isFor(asked, ledger)) throw refuse('was issued for another order or class; give the order as it was, or issue a new ledger');
  if (ledger.part) throw refuse(`holds part ${ledger.part.number} of ${ledger.part.of} alone; give the ledger of the whole class`);
  return ledger;
}

/** Parts of an assessed pack that each drew a secret of their own would not be parts of one pack. */
function issueHere(asked: Asked, part: Part | undefined): Ledger {
  if (part && asked.order.seed === undefined) {
    throw new UserMistake('the parts of an assessed pack need one secret; make a ledger first (slidewire issue ORDER.yaml --out LEDGER.json) and give it to every part with --ledger LEDGER.json');
  }
  return issueLedger(asked);
}

function summary(folder: string, { issues, part }: Ledger): string {
  const first = issues.filter(({ sitting }) => sitting === 1).length;
  const close = issues.filter(({ shared }) => shared.length > 0).length;
  return [
    `${part ? `Part ${part.number} of ${part.of}: ` : ''}${first} student${first === 1 ? '' : 's'}. For the students: ${join(folder, 'students')}`,
    `For the teacher alone: ${join(folder, 'teacher')}`,
    ...(close > 0 ? [`${close} of the sheets share a right answer with another; ledger.json says which.`] : []),
  ].join('\n');
}
