/**
 * How many sets a second, each also against a fixed piece of work that is timed in the same round: hashing a megabyte
 * by SHA-256 in JavaScript.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { resistivity } from '../../generators/experiments/resistivity.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { conventions } from '../../generators/sheets/conventions.ts';
import { issueSheets, programOf } from '../../generators/sheets/issue.ts';
import type { Sheet } from '../../generators/sheets/sheet.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { demo, demoAsks, sets, tables } from '../experiments/demo.ts';
import { median } from './median.ts';

const ROUNDS = 7;
const SETS = 300;

const asks = demoAsks({});
const sheets: Sheet[] = [...sets(asks, SETS, 'bench')].map(({ ask, observed }) => ({
  format: 1,
  edition: resistivity.edition,
  experiment: resistivity.id,
  origin: 'generated',
  form: observed.form,
  readings: observed.readings,
  conventions: conventions(demo, ask, resistivity, resistivity.steps(observed.form)),
}));
const megabyte = new Uint8Array(1_000_000);
const classOf30 = Array.from({ length: 30 }, (_, i) => ({ roll: String(i + 1), name: '' }));

interface Work {
  name: string;
  /** Done once in `run`. */
  units: number;
  run(): void;
}

const reference: Work = { name: 'reference: hash a megabyte', units: 1, run: () => sha256(megabyte) };
const each = (run: (sheet: Sheet) => void) => () => sheets.forEach(run);
const works: Work[] = [
  { name: 'observe a set', units: SETS, run: () => [...sets(asks, SETS, 'bench')] },
  { name: 'evaluate', units: SETS, run: each((sheet) => evaluate(programOf(resistivity, sheet), sheet.readings, 'even')) },
  { name: 'accept ranges', units: SETS, run: each((sheet) => acceptRanges(programOf(resistivity, sheet), sheet.readings, sheet.conventions)) },
  { name: 'work out, all of it', units: SETS, run: each((sheet) => workOut(sheet, programOf(resistivity, sheet))) },
  { name: 'budget of ρ besides', units: SETS, run: each((sheet) => workOut(sheet, programOf(resistivity, sheet)).budget('rho')) },
  { name: 'issue a class of 30', units: 30, run: () => issueSheets({ order: demo, experiment: resistivity, tables, secret: 'bench' }, classOf30) },
];

/** Milliseconds for one unit. */
function time({ run, units }: Work): number {
  const from = performance.now();
  run();
  return (performance.now() - from) / units;
}

for (const work of [reference, ...works]) work.run();
const rounds = Array.from({ length: ROUNDS }, () => {
  const megabyteHashed = time(reference);
  return { megabyteHashed, spent: works.map(time) };
});
const hashed = median(rounds.map(({ megabyteHashed }) => megabyteHashed));
console.log(`${reference.name}: ${hashed.toPrecision(3)} ms (median of ${ROUNDS} rounds)`);
for (const [i, { name }] of works.entries()) {
  const spent = median(rounds.map((round) => round.spent[i]!));
  const against = median(rounds.map((round) => round.megabyteHashed / round.spent[i]!));
  console.log(`${name.padEnd(22)} ${Math.round(1000 / spent).toString().padStart(6)} a second, ${against.toPrecision(3).padStart(5)} in the time of a megabyte`);
}
