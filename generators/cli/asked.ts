import { readFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { UserMistake } from '../mistake.ts';
import { type Flags, orderFlags } from '../order/flags.ts';
import type { Known } from '../order/known.ts';
import { type Student, readClassList } from '../order/class-list.ts';
import { orderFromFlags, readOrder } from '../order/read-order.ts';
import type { Order } from '../order/schema.ts';
import type { Tables } from '../sheets/tables.ts';
import { knownNames, loadTables } from './content.ts';

/** Everything a command that takes an order has read. */
export interface Asked {
  order: Order;
  students: Student[];
  notices: string[];
  tables: Tables;
  known: Known;
  /** Flags of the command's own. */
  own: Record<string, string | undefined>;
}

/** Reads the order (a file, flags, or both) and the class list; `own` names the command's further flags, each with a value. */
export function readAsked(args: string[], own: readonly string[]): Asked {
  const tables = loadTables();
  const known = knownNames(tables);
  const { flags, file } = commandLine(args, known, own);
  const order = file === undefined ? orderFromFlags(flags, known) : readOrder(text(file), basename(file), known, flags);
  const list = flags['class'] === undefined && file !== undefined ? resolve(dirname(file), order.class ?? '') : order.class;
  const { students, notices } = order.class === undefined ? { students: [], notices: [] } : readClassList(bytes(list!), basename(list!), known);
  return { order, students, notices, tables, known, own: flags as Asked['own'] };
}

function commandLine(args: string[], known: Known, own: readonly string[]): { flags: Flags; file: string | undefined } {
  const options: ParseArgsConfig['options'] = {};
  for (const { name, many } of orderFlags(known)) options[name] = { type: 'string', multiple: many };
  for (const name of own) options[name] = { type: 'string' };
  try {
    const { values, positionals } = parseArgs({ args, options, allowPositionals: true });
    if (positionals.length > 1) throw new UserMistake(`one order at a time: ${positionals.join(', ')} are ${positionals.length}`);
    return { flags: values as Flags, file: positionals[0] };
  } catch (error) {
    if (error instanceof TypeError) throw new UserMistake(`${error.message.split('. ')[0]}; run slidewire help pack for the list of flags`, { cause: error });
    throw error;
  }
}

const text = (file: string) => bytes(file).toString('utf8');

function bytes(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    const what = code === 'ENOENT' ? 'there is no such file' : code === 'EISDIR' ? 'this is a folder, not a file' : `cannot be read (${code})`;
    throw new UserMistake([{ file, what: `${what}; check the path` }], { cause });
  }
}

/** The flags of an order, for a command's help. */
export function orderHelp(): string {
  return orderFlags(knownNames(loadTables()))
    .map(({ name, takes, meaning, many }) => `  --${name}${many ? ' (may be repeated)' : ''}\n      ${meaning}; ${takes}`)
    .join('\n');
}
