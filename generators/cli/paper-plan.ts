import { basename, dirname, resolve } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { readClassList } from '../order/class-list.ts';
import type { PaperOrder } from '../order/paper-order.ts';
import type { Entry } from '../papers/entry.ts';
import { type Named, entryNamed, sameness } from '../papers/named.ts';
import type { For, PaperPlan } from '../papers/paper.ts';
import { pool } from '../papers/pool.ts';
import type { Streams } from '../random.ts';
import { bytes } from './asked.ts';
import { knownNames, loadTables } from './content.ts';

/** What a paper file asks for, with its class list read and its named questions found. */
export function planOf(order: PaperOrder, path: string, random: Streams, used: ReadonlySet<string>): { plan: PaperPlan; notices: string[] } {
  const { whose, notices } = whoseOf(order, path);
  const set = namedEntries(order.questions, basename(path), random);
  return { plan: { set, pool: pool(order.sd), demands: order.demands, whose, isClass: order.class !== undefined, used }, notices };
}

/** Each named question's entry; one that counts several times is the same Named again, and any other must be another question. */
function namedEntries(questions: readonly Named[], file: string, random: Streams): Entry[] {
  const entries: Entry[] = [];
  questions.forEach((one, place) => {
    const taken = entries.filter((_, other) => questions[other] !== one).map(sameness);
    entries.push(found(one, place, file, random, new Set(taken)));
  });
  return entries;
}

function found(one: Named, place: number, file: string, random: Streams, taken: ReadonlySet<string>): Entry {
  try {
    return entryNamed(one, random.of('named', place), taken);
  } catch (error) {
    if (error instanceof UserMistake) throw new UserMistake(error.mistakes.map(({ what }) => ({ file, field: `questions ${place + 1}`, what })));
    throw error;
  }
}

function whoseOf(order: PaperOrder, path: string): { whose: For[]; notices: string[] } {
  if (order.class === undefined) return { whose: Array.from({ length: order.versions }, (_, i) => ({ name: String.fromCharCode(65 + i) })), notices: [] };
  const list = resolve(dirname(path), order.class);
  const { students, notices } = readClassList(bytes(list), basename(list), knownNames(loadTables()));
  return { whose: students.map(({ name, roll }) => ({ name, roll })), notices };
}
