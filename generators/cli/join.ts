import { resolve } from 'node:path';
import { type Mistake, UserMistake } from '../mistake.ts';
import { type Ledger, doubles, ledgerText, makeLedger } from '../sheets/ledger.ts';
import { bounds, joined } from '../sheets/part.ts';
import { needed } from './class-order.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { ledgerIn, textIn, writeLedger } from './record-file.ts';

const OUT: Flag = { name: 'out', many: false, takes: 'the path of a file that is not there yet', meaning: 'the file for the ledger of the whole class' };

export const join: Command = {
  usage: 'join LEDGER … --out LEDGER.json',
  about: 'one ledger from those of all parts that slidewire pack --shard made',
  help: () => `slidewire ${join.usage}\n    ${join.about}\n\n  --${OUT.name}  ${OUT.meaning}\n         takes ${OUT.takes}`,
  async run(args) {
    const { flags, positionals } = readCommandLine(args, [OUT]);
    const file = resolve(needed(flags['out'], 'say where the ledger goes: --out LEDGER.json'));
    if (positionals.length === 0) throw new UserMistake('no ledgers; name those of all parts, such as part-*/teacher/ledger.json');
    const ledger = joinParts(await Promise.all(positionals.map(readPart)));
    const there = await textIn(file);
    if (there !== undefined && there !== ledgerText(ledger)) throw new UserMistake([{ file, what: 'is there and is another; choose another name with --out' }]);
    if (there === undefined) await writeLedger(file, ledger);
    process.stdout.write(`${ledger.issues.length} sheets of ${positionals.length} parts: ${file}\n`);
  },
};

interface PartFile {
  file: string;
  ledger: Ledger;
  part: NonNullable<Ledger['part']>;
}

async function readPart(file: string): Promise<PartFile> {
  const ledger = await ledgerIn(resolve(file));
  if (!ledger) throw new UserMistake([{ file, what: 'there is no such file; check the path' }]);
  if (!ledger.part) throw new UserMistake([{ file, what: 'is the ledger of a whole class and no part of one; leave it out' }]);
  return { file, ledger, part: ledger.part };
}

/** The ledger of the class; it is byte for byte the one that the parts were made from. */
function joinParts(parts: readonly PartFile[]): Ledger {
  const first = parts[0]!;
  const strangers = parts.flatMap((each) => stranger(each, first));
  if (strangers.length > 0) throw new UserMistake(strangers);
  const mistakes = [...parts.flatMap((each, i) => flaws(each, parts.slice(0, i))), ...missing(parts)];
  if (mistakes.length > 0) throw new UserMistake(mistakes);
  const issues = joined(parts.toSorted((a, b) => a.part.number - b.part.number).map(({ ledger }) => ledger));
  const twice = doubles(issues);
  if (twice.length > 0) throw new UserMistake(twice);
  const { part: _, ...head } = first.ledger;
  return makeLedger(head, issues);
}

function stranger({ file, ledger, part }: PartFile, first: PartFile): Mistake[] {
  const differs = (what: string): Mistake[] => [{ file, what: `${what} as ${first.file}; join the parts of one pack` }];
  if (ledger.orderDigest !== first.ledger.orderDigest) return differs('is not of the same order and class');
  if (ledger.secret !== first.ledger.secret) return differs('was not issued under the same secret');
  return part.of === first.part.of ? [] : differs(`is a part of ${part.of}, which are not as many`);
}

/** What is wrong with a part beside those before it. */
function flaws({ file, ledger, part }: PartFile, before: readonly PartFile[]): Mistake[] {
  const same = before.find((other) => other.part.number === part.number);
  if (same) return [{ file, what: `is part ${part.number}, as ${same.file} is; give each part once` }];
  const [from, to] = bounds(part.students, part);
  const held = ledger.issues.filter(({ sitting }) => sitting === 1).length;
  return held === to - from ? [] : [{ file, what: `holds ${held} students where part ${part.number} of ${part.of} has ${to - from}; make that part again` }];
}

function missing(parts: readonly PartFile[]): Mistake[] {
  const { of } = parts[0]!.part;
  const there = new Set(parts.map(({ part }) => part.number));
  const absent = Array.from({ length: of }, (_, i) => i + 1).filter((number) => !there.has(number));
  if (absent.length === 0) return [];
  return [{ what: `of ${of} parts these are missing: ${absent.join(', ')}; give the ledger of every part` }];
}
