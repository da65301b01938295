import { existsSync } from 'node:fs';
import { readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { type AnswerRow, readAnswers } from '../marking/answers-file.ts';
import type { ClassMarks } from '../marking/class-report.ts';
import { changesInWords } from '../marking/class-report.ts';
import { type Column, columnsOf, fullMarks } from '../marking/columns.ts';
import { type CopyQuestion, copies } from '../marking/copies.ts';
import { headOf } from '../marking/heads.ts';
import { lostZeros } from '../marking/lost-zeros.ts';
import { type StudentMarks, markClass } from '../marking/mark-class.ts';
import { marksCsv } from '../marking/marks-csv.ts';
import { type MarkingRecord, makeRecord, readRecord } from '../marking/record.ts';
import type { Scheme } from '../marking/scheme.ts';
import { swappedColumns } from '../marking/swapped.ts';
import type { MarkingWords } from '../marking/words.ts';
import { UserMistake } from '../mistake.ts';
import { checkOrder, fieldName } from '../order/check.ts';
import type { Flags } from '../order/flags.ts';
import type { Order } from '../order/schema.ts';
import { openPress } from '../press/print.ts';
import { mendFolder, wholeFolder } from '../press/whole-folder.ts';
import { programOf } from '../sheets/issue.ts';
import type { Ledger } from '../sheets/ledger.ts';
import { needed } from './class-order.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { type Words, knownNames, loadTables, loadWords } from './content.ts';
import { USUAL_SCHEME, loadMarkingWords, loadScheme, schemeNames } from './marking-content.ts';
import { printReports, writeReports } from './marking-reports.ts';
import { prepareMarking } from './prepare-marking.ts';
import { ledgerIn, textIn } from './record-file.ts';

const choice = (name: string, of: readonly string[], meaning: string): Flag => ({ name, many: false, takes: `one of ${of.join(', ')} (default: ${of[0]!})`, meaning });

const FLAGS: readonly Flag[] = [
  { name: 'out', many: false, takes: 'the path of a folder that is not there yet, or of an earlier marking of the same pack', meaning: 'the folder for the marks and reports' },
  { name: 'scheme', many: false, takes: `a name (${schemeNames().join(', ')}; default: ${USUAL_SCHEME}), or the path of your own`, meaning: 'the mark scheme' },
  { name: 'decimal', many: false, takes: 'one of point, comma (default: as the order says)', meaning: 'the decimal sign in the answers, the marks and the reports' },
  choice('slips', ['4', '2'], 'feedback slips on a page'),
  choice('pdf', ['yes', 'no'], 'whether the reports are printed too, or made as HTML alone'),
];

export const mark: Command = {
  usage: 'mark LEDGER.json ANSWERS.csv --out DIR',
  about: 'marks a class: feedback slips, a class page and a marks file; without ANSWERS.csv, the answers file and typing page of a mark scheme',
  help: () => `slidewire ${mark.usage}\n    ${mark.about}\n\n${FLAGS.map(({ name, meaning, takes }) => `  --${name.padEnd(8)}${meaning}\n${''.padEnd(12)}takes ${takes}`).join('\n')}`,
  async run(args) {
    const { flags, positionals } = readCommandLine(args, FLAGS);
    const [ledgerPath, answersPath, ...rest] = positionals;
    if (ledgerPath === undefined || rest.length > 0) throw new UserMistake('give the ledger of the pack and the answers: slidewire mark PACK/teacher/ledger.json ANSWERS.csv --out DIR');
    const folder = resolve(needed(flags['out'], 'say where the marks go: --out DIR'));
    const asked = await readAsked(ledgerPath, flags);
    if (answersPath === undefined) return prepare(folder, asked);
    const marks = await markAnswers(answersPath, asked);
    await finish(folder, marks, asked, { per: oneOf(flags, 'slips', ['4', '2']) === '2' ? 2 : 4, pdf: oneOf(flags, 'pdf', ['yes', 'no']) === 'yes' });
  },
};

/** All that marking hangs on besides the answers. */
interface Asked {
  ledger: Ledger;
  order: Order;
  scheme: Scheme;
  columns: Column[];
  words: Words;
  said: MarkingWords;
}

async function readAsked(path: string, flags: Flags): Promise<Asked> {
  const ledger = await ledgerIn(resolve(path));
  if (!ledger) throw new UserMistake([{ file: path, what: 'there is no such file; a pack keeps its ledger in teacher/ledger.json' }]);
  const asked = checkOrder(ledger.order, knownNames(loadTables()), (field) => ({ file: path, field: `order.${fieldName(field)}` }));
  const order = { ...asked, ...(flags['decimal'] !== undefined && { decimal: oneOf(flags, 'decimal', ['point', 'comma']) }) };
  if (order.readings === 'blank') throw new UserMistake([{ file: path, what: 'the students of this pack took the readings themselves, so that there is nothing to mark against' }]);
  const scheme = loadScheme(flags['scheme'] === undefined ? USUAL_SCHEME : String(flags['scheme']));
  const columns = columnsOf(scheme, experimentNamed(order.experiment), ledger.issues.map(({ sheet }) => sheet));
  return { ledger, order, scheme, columns, words: loadWords(order.language, order.experiment), said: loadMarkingWords(order.language) };
}

function oneOf<T extends string>(flags: Flags, name: string, values: readonly [T, ...T[]]): T {
  const value = flags[name] ?? values[0];
  const found = values.find((each) => each === value);
  if (found === undefined) throw new UserMistake([{ field: `--${name}`, what: `"${String(value)}" does not fit here; it takes one of ${values.join(', ')}` }]);
  return found;
}

async function prepare(folder: string, { order, ledger, scheme }: Asked): Promise<void> {
  if (existsSync(folder)) throw new UserMistake([{ file: folder, what: 'is there already; choose another with --out, so that no answers are written over' }]);
  await wholeFolder(folder, (partial) => prepareMarking(partial, { order, issues: ledger.issues, scheme }));
  process.stdout.write(`Type the answers in ${join(folder, 'typing.html')}, or in ${join(folder, 'answers.csv')} with a spreadsheet.\n`);
}

const programFor = ({ order }: Asked) => ({ issue }: { issue: Ledger['issues'][number] | AnswerRow['issue'] }) => programOf(experimentNamed(order.experiment), issue.sheet);

async function markAnswers(path: string, asked: Asked): Promise<Omit<ClassMarks, 'changes'>> {
  const { ledger, order: { decimal }, columns, scheme, said, words } = asked;
  const { symbols } = words.spoken;
  const { rows, notices } = readAnswers(await bytesOf(path), basename(path), ledger.issues, { columns, symbols, heads: said.heads, decimal, words: said });
  const swapped = swappedColumns(rows, columns, (column) => `"${headOf(column, symbols, said.heads)}"`, programFor(asked));
  if (swapped.length > 0) throw new UserMistake(swapped.map((mistake) => ({ file: basename(path), ...mistake })));
  const students = markClass(experimentNamed(asked.order.experiment), ledger.issues, rows, columns, scheme);
  const questions = copies(students);
  const told = [...notices, ...unitNotice(rows, scheme), ...zeroNotice(students), ...shiftNotice(students, questions)];
  for (const notice of told) process.stderr.write(`${notice}\n`);
  return { students, columns, full: fullMarks(columns), scheme: scheme.title, copies: questions, programFor: programFor(asked) };
}

/** Who typed no unit at all has meant something else than a class without units. */
function unitNotice(rows: readonly AnswerRow[], { units, title }: Scheme): string[] {
  const numbers = rows.flatMap(({ entries }) => entries.filter((entry) => entry.is === 'number'));
  if (units === 'assumed' || numbers.length === 0 || numbers.some(({ unit }) => unit !== undefined)) return [];
  return [`no answer has a unit, and by the scheme "${title}" each sheet loses marks for that; where the students wrote units, type them, or set "units: assumed" in a scheme of your own`];
}

function zeroNotice(students: readonly StudentMarks[]): string[] {
  const short = lostZeros(students);
  if (short === 0) return [];
  return [`${short} numbers have too few figures, and no number ends in 0: spreadsheets drop zeros at the end of a number (2.60 becomes 2.6), which costs marks for figures here; type the unit behind the number, or make the cells text before you type`];
}

const studentsIn = (questions: readonly CopyQuestion[]) => new Set(questions.map(({ student }) => student)).size;

/** No class has so many whose answers are another's; a spreadsheet that has sorted some of its columns makes them. */
function shiftNotice(students: readonly StudentMarks[], questions: readonly CopyQuestion[]): string[] {
  const [marked, fit] = [students.filter(({ absent }) => !absent).length, studentsIn(questions)];
  if (fit < 5 || 3 * fit < marked) return [];
  return [`answers of ${fit} of ${marked} students fit other sheets than their own: look whether answers were sorted or moved without their codes before you hand anything back`];
}

async function bytesOf(path: string): Promise<Uint8Array> {
  try {
    return await readFile(resolve(path));
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    throw new UserMistake([{ file: path, what: code === 'ENOENT' ? 'there is no such file; check the path' : `cannot be read (${code}); check the path` }], { cause });
  }
}

const RECORD = 'marking.json';

async function finish(folder: string, marks: Omit<ClassMarks, 'changes'>, asked: Asked, { per, pdf }: { per: 2 | 4; pdf: boolean }): Promise<void> {
  const { ledger, order, words, said } = asked;
  mendFolder(folder);
  const heads = marks.columns.map((column) => headOf(column, words.spoken.symbols, said.heads));
  const record = makeRecord({ orderDigest: ledger.orderDigest, scheme: marks.scheme, heads }, marks.students);
  const before = await earlier(folder, record);
  const changed = before && changesInWords(before, record, said);
  const reports: string[] = [];
  await wholeFolder(folder, async (partial) => {
    await writeFile(join(partial, RECORD), `${JSON.stringify(record, null, 1)}\n`);
    await writeFile(join(partial, 'marks.csv'), marksCsv(marks.students, marks.columns, words.spoken.symbols, said, order.decimal));
    const made = await writeReports({ folder: partial, order, marks: { ...marks, ...(changed && { changes: changed }) }, words, said, per });
    reports.push(...made.flatMap(({ file }) => [`${file}.html`, ...(pdf ? [`${file}.pdf`] : [])]));
    if (!pdf) return;
    const press = await openPress();
    try {
      await printReports(partial, made, press);
    } finally {
      await press.close();
    }
  });
  if (before) await clearReports(folder, reports);
  for (const change of changed ?? []) process.stdout.write(`${change}\n`);
  if (changed?.length === 0) process.stdout.write(`${said.class.changedNone}\n`);
  const marked = marks.students.filter(({ absent }) => !absent).length;
  const questions = studentsIn(marks.copies);
  process.stdout.write(`${marked} of ${marks.students.length} sheets marked${questions > 0 ? `; answers of ${questions} student${questions > 1 ? 's' : ''} fit another sheet, see class.html` : ''}: ${folder}\n`);
}

/** Takes away what an earlier marking printed and this one did not, so that no report tells of other marks. */
async function clearReports(folder: string, made: readonly string[]): Promise<void> {
  const old = (await readdir(folder)).filter((name) => /^(?:class|feedback-\d+)\.(?:html|pdf)$/.test(name) && !made.includes(name));
  for (const name of old) await rm(join(folder, name));
}

/** The record of an earlier marking of the same pack; anything else in the folder is not written over. */
async function earlier(folder: string, { orderDigest }: MarkingRecord): Promise<MarkingRecord | undefined> {
  if (!existsSync(folder)) return undefined;
  const text = await textIn(join(folder, RECORD));
  if (text === undefined) throw new UserMistake([{ file: folder, what: 'is there and holds no marking; choose another with --out' }]);
  const before = readRecord(text, join(folder, RECORD));
  if (before.orderDigest === orderDigest) return before;
  throw new UserMistake([{ file: folder, what: 'holds the marking of another pack; choose another with --out' }]);
}
