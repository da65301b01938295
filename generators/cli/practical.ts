import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import { readClassList } from '../order/class-list.ts';
import { type Exam, readExam } from '../order/exam.ts';
import type { Known } from '../order/known.ts';
import { decodeText } from '../order/text.ts';
import { writeWireAsk } from '../order/wire-ask.ts';
import { documentHtml } from '../press/documents.ts';
import { openPress } from '../press/print.ts';
import { templates } from '../press/templates.ts';
import { mendFolder, wholeFolder } from '../press/whole-folder.ts';
import { keyedHash } from '../random.ts';
import { type Batch, drawLots } from '../sheets/lots.ts';
import { type Candidate, type Combination, type Head, awardPages, slipsPage, stationsPage } from '../sheets/practical-pages.ts';
import type { Tables } from '../sheets/tables.ts';
import { bytes } from './asked.ts';
import { needed } from './class-order.ts';
import type { Command } from './command.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import { knownNames, loadPracticalWords, loadTables, loadWords } from './content.ts';
import { textIn } from './record-file.ts';
import { planWires } from './wires.ts';

const FLAGS: readonly Flag[] = [{ name: 'out', many: false, takes: 'the path of a folder that is not there yet, or of the same examination', meaning: 'the folder for slips, station list and award sheets' }];

export const practical: Command = {
  usage: 'practical EXAM.yaml --out DIR',
  about: 'a practical examination: slips for the lots, a station list, an award sheet for each batch',
  help: () => `slidewire ${practical.usage}\n${practical.about}`,
  async run(args) {
    const { flags, positionals } = readCommandLine(args, FLAGS);
    const [path, ...more] = positionals;
    if (path === undefined || more.length > 0) throw new UserMistake('give one file: slidewire practical EXAM.yaml --out DIR');
    const folder = resolve(needed(flags['out'], 'say where the papers go: --out DIR'));
    const tables = loadTables();
    const known = knownNames(tables);
    const { text, notices } = decodeText(bytes(path), basename(path));
    const exam = readExam(text, basename(path), known);
    const list = readClassList(bytes(resolve(dirname(path), exam.class)), basename(exam.class), known);
    for (const notice of [...notices, ...list.notices]) process.stderr.write(`${notice}\n`);
    const candidates = list.students.map(({ roll, name }): Candidate => ({ roll, name }));
    const combinations = exam.tasks.flatMap((_, place) => combinationsOf(exam, place, basename(path), tables, known));
    const draw = await drawFor(folder, exam, candidates);
    const lots = drawLots(candidates, combinations, exam.batch, draw.secret);
    await wholeFolder(folder, (partial) => fill(partial, exam, lots, draw));
    process.stdout.write(`${candidates.length} candidates in ${lots.length} ${lots.length === 1 ? 'batch' : 'batches'}: ${join(folder, 'slips.pdf')}, stations.pdf, award-sheets.pdf\n`);
  },
};

/** Every task on every choice of its wires; what the bench cannot do is refused. */
function combinationsOf(exam: Exam, place: number, file: string, tables: Tables, known: Known): Combination[] {
  const order = exam.tasks[place]!;
  const experiment = experimentNamed(order.experiment);
  const words = loadWords(order.language, order.experiment).experiment as unknown as Combination['words'];
  const field = `tasks ${place + 1}`;
  if (experiment.layout.circuit === undefined) throw new UserMistake([{ file, field: `${field}.experiment`, what: `${order.experiment} is done on paper; set an experiment that is done on the bench` }]);
  const { usable, refused } = planWires({ order, students: [], notices: [], tables, known, files: { order: file }, flags: {} });
  if (refused.length > 0) throw new UserMistake(refused.map((mistake) => ({ ...mistake, file, field: `${field}.${mistake.field ?? 'wires'}` })));
  return usable.map(({ wires, ask }) => ({ experiment, words, ask, wires: wires.map(writeWireAsk) }));
}

/** What decides the lots: kept beside them, so that the same examination is printed again with the same lots. */
interface Draw {
  secret: string;
  digest: string;
}

const LOTS = 'lots.json';

async function drawFor(folder: string, exam: Exam, candidates: readonly Candidate[]): Promise<Draw> {
  mendFolder(folder);
  const digest = keyedHash('practical', [JSON.stringify([exam, candidates])]);
  const kept = await textIn(join(folder, LOTS));
  const before = kept === undefined ? undefined : (JSON.parse(kept) as Partial<Draw>);
  if (before?.digest === digest && before.secret !== undefined) return { secret: before.secret, digest };
  if (existsSync(folder)) throw new UserMistake([{ file: folder, what: 'the folder is there and holds other lots than of this examination and class; choose another with --out, or remove it' }]);
  return { secret: exam.seed ?? Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('hex'), digest };
}

async function fill(partial: string, exam: Exam, lots: Batch<Candidate, Combination>[], draw: Draw): Promise<void> {
  const [first] = exam.tasks;
  const order = { ...first!, paper: exam.paper };
  const { spoken, sheet } = loadWords(order.language, order.experiment);
  const words = loadPracticalWords(order.language);
  const printed = { exam: { ...exam, title: exam.title || words.title }, lots, heads: exam.marks ?? (words.heads as Head[]), spoken };
  const fields = sheet['fields'] as Record<string, string>;
  const environment = templates();
  const html = (title: string, pages: object[], orientation: 'portrait' | 'landscape' = 'portrait') => documentHtml(environment, { order, title, words, experiment: {}, orientation }, pages);
  await mkdir(partial, { recursive: true });
  await writeFile(join(partial, LOTS), `${JSON.stringify({ ...draw, batches: lots.map(recordOf) }, null, 1)}\n`);
  const press = await openPress();
  try {
    await press.print(html(words.title, [slipsPage(printed)]), join(partial, 'slips.pdf'));
    await press.print(html(words.stations.title, [stationsPage(printed)]), join(partial, 'stations.pdf'));
    await press.print(html(words.award.title, awardPages(printed, fields), 'landscape'), join(partial, 'award-sheets.pdf'));
  } finally {
    await press.close();
  }
}

const recordOf = ({ number, lots }: Batch<Candidate, Combination>) => ({
  batch: number,
  lots: lots.map(({ candidate, station }) => ({ ...candidate, station: station.number, experiment: station.combination.experiment.id, wires: station.combination.wires })),
});
