import { experimentNamed } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import type { Flags } from '../order/flags.ts';
import { issueSheets } from '../sheets/issue.ts';
import { type Ledger, makeLedger, orderDigest } from '../sheets/ledger.ts';
import { type Asked, readAsked } from './asked.ts';
import type { Flag } from './command-line.ts';
import { progress } from './progress.ts';
import { planWires } from './wires.ts';

/** An order with its class, all of whose wires can be used; what was noticed in reading it is told. */
export function readClassOrder(args: string[], own: readonly Flag[]): Asked {
  const asked = readAsked(args, own);
  if (asked.students.length === 0) throw new UserMistake('no class list; name one in the order (class: class.csv) or with --class class.csv');
  for (const notice of asked.notices) process.stderr.write(`${notice}\n`);
  const { id, readingsGiven } = experimentNamed(asked.order.experiment);
  if (readingsGiven && asked.order.readings === 'blank') throw new UserMistake([{ field: 'readings', what: `${id} is an exercise on readings that are given; leave out "blank"` }]);
  const { refused } = planWires(asked);
  if (refused.length > 0) throw new UserMistake(refused);
  return asked;
}

/** A class that is drawn in a moment needs no word of it. */
const MANY = 100;

/** Issues every sheet of the order. The chosen seed makes a practice pack; without one, 128 random bits make an assessed one. */
export function issueLedger({ order, students, tables }: Asked): Ledger {
  const kind = order.seed === undefined ? 'assessed' : 'practice';
  const secret = order.seed ?? Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('hex');
  const told = progress();
  if (students.length >= MANY) told.start('sheets drawn:', students.length);
  const issues = issueSheets({ order, experiment: experimentNamed(order.experiment), tables, secret }, students, [], students.length >= MANY ? told.step : undefined);
  return makeLedger({ kind, secret, orderDigest: orderDigest(order, students), order }, issues);
}

export function tellSecrecy({ kind, secret }: Ledger): void {
  if (kind === 'practice') process.stderr.write(`A practice pack: whoever knows or guesses the seed "${secret}" can make its keys. Leave out the seed for work that counts.\n`);
}

/** The value of a flag that has to be given; `lacking` says what to do where it is not. */
export function needed(value: Flags[string], lacking: string): string {
  if (typeof value !== 'string' || value === '') throw new UserMistake(lacking);
  return value;
}
