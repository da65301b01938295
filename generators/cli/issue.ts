import { resolve } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { orderDigest } from '../sheets/ledger.ts';
import { issueLedger, needed, readClassOrder, tellSecrecy } from './class-order.ts';
import type { Command } from './command.ts';
import { orderHelp } from './help.ts';
import { ledgerIn, writeLedger } from './record-file.ts';

const OUT = { name: 'out', many: false, takes: 'the path of a file that is not there yet, or of a ledger of the same order', meaning: 'the file for the ledger' };

export const issue: Command = {
  usage: 'issue ORDER.yaml --out LEDGER.json',
  about: 'the numbers of every sheet, in a ledger, and nothing printed: for slidewire pack --ledger, on one machine or several',
  help: () => orderHelp(issue, [OUT]),
  async run(args) {
    const asked = readClassOrder(args, [OUT]);
    const file = resolve(needed(asked.flags['out'], 'say where the ledger goes: --out LEDGER.json'));
    const kept = await ledgerIn(file);
    if (kept && kept.orderDigest !== orderDigest(asked.order, asked.students)) {
      throw new UserMistake([{ file, what: 'the file is there and holds the ledger of another order or class; choose another with --out' }]);
    }
    const ledger = kept ?? issueLedger(asked);
    tellSecrecy(ledger);
    if (!kept) await writeLedger(file, ledger);
    process.stdout.write(`${ledger.issues.length} sheets, ${kept ? 'issued before' : 'issued'}, for the teacher alone: ${file}\n`);
  },
};
