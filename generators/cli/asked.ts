import { readFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { type Student, readClassList } from '../order/class-list.ts';
import { type Flags, orderFlags } from '../order/flags.ts';
import type { Known } from '../order/known.ts';
import { orderFromFlags, readOrder } from '../order/read-order.ts';
import type { Order } from '../order/schema.ts';
import { decodeText } from '../order/text.ts';
import type { Tables } from '../sheets/tables.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import { knownNames, loadTables } from './content.ts';

/** Everything a command that takes an order has read. */
export interface Asked {
  order: Order;
  students: Student[];
  notices: string[];
  tables: Tables;
  known: Known;
  /** Names of the files that were read, for messages. */
  files: { order?: string; class?: string };
  /** The flags that were given, those of the command's own among them. */
  flags: Flags;
}

/** Reads the order (a file, flags, or both) and the class list; `own` are the command's further flags. */
export function readAsked(args: string[], own: readonly Flag[]): Asked {
  const tables = loadTables();
  const known = knownNames(tables);
  const ofOrder = orderFlags(known);
  const { flags, positionals } = readCommandLine(args, [...own, ...ofOrder]);
  if (positionals.length > 1) throw new UserMistake(tooMany(positionals));
  const [path] = positionals;
  if (path === undefined && ofOrder.every(({ name }) => flags[name] === undefined)) {
    throw new UserMistake('no order; name its file, or say at least which experiment, such as --experiment resistivity (slidewire help pack lists the flags)');
  }
  const { order, notices } = path === undefined ? { order: orderFromFlags(flags, known), notices: [] } : orderInFile(path, known, flags);
  const list = classPath(order, flags, path);
  const read = list === undefined ? { students: [], notices: [] } : readClassList(bytes(list), basename(list), known);
  return {
    order,
    students: read.students,
    notices: [...notices, ...read.notices],
    tables,
    known,
    files: { ...(path !== undefined && { order: basename(path) }), ...(list !== undefined && { class: basename(list) }) },
    flags,
  };
}

function tooMany(positionals: readonly string[]): string {
  return `one order at a time, but here are ${positionals.map((each) => `"${each}"`).join(', ')}; put quotation marks round a value that holds spaces`;
}

function orderInFile(path: string, known: Known, flags: Flags): { order: Order; notices: string[] } {
  const { text, notices } = decodeText(bytes(path), basename(path));
  return { order: readOrder(text, basename(path), known, flags), notices };
}

/** A path on the command line starts where the command runs, a path in an order file from the folder of that file. */
function classPath(order: Order, flags: Flags, orderPath: string | undefined): string | undefined {
  if (order.class === undefined) return undefined;
  return orderPath === undefined || flags['class'] !== undefined ? order.class : resolve(dirname(orderPath), order.class);
}

/** What a file holds; a UserMistake where it cannot be read. */
export function bytes(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    const what = code === 'ENOENT' ? 'there is no such file' : code === 'EISDIR' ? 'this is a folder, not a file' : `cannot be read (${code})`;
    throw new UserMistake([{ file, what: `${what}; check the path` }], { cause });
  }
}
