import { existsSync, readdirSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { type PaperOrder, readPaper } from '../order/paper-order.ts';
import { decodeText } from '../order/text.ts';
import { markTable } from '../papers/demands.ts';
import { type Version, keysOf, makePaper } from '../papers/paper.ts';
import { versionView } from '../papers/view.ts';
import { openPress } from '../press/print.ts';
import { mendFolder, wholeFolder } from '../press/whole-folder.ts';
import { streams } from '../random.ts';
import { bytes } from './asked.ts';
import { needed } from './class-order.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { loadFigureWords } from './content.ts';
import { type WrittenPaper, printPaper, writeExports } from './paper-files.ts';
import { planOf } from './paper-plan.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from './question-words.ts';
import { addUsed, readUsed } from './used-questions.ts';

const KINDS = ['print', 'csv', 'json', 'qti'] as const;
const FLAGS: readonly Flag[] = [
  { name: 'out', many: false, takes: 'the path of a folder', meaning: 'where the paper goes' },
  { name: 'as', many: true, takes: `one of the words ${KINDS.join(', ')}; may be repeated`, meaning: 'what is written; everything where it is left out' },
];
const LANGUAGE = 'en';

export const paper: Command = {
  usage: 'paper PAPER.yaml --out DIR',
  about: 'a question paper in parallel versions or for each candidate, mark schemes, the answers on a page, and the questions as CSV, JSON and QTI',
  help: () => [`slidewire ${paper.usage}`, `    ${paper.about}`, ...FLAGS.map(({ name, meaning, takes }) => `\n  --${name}  ${meaning}\n        takes ${takes}`)].join('\n'),
  async run(args) {
    const { flags, positionals } = readCommandLine(args, FLAGS);
    const [path, ...more] = positionals;
    if (path === undefined || more.length > 0) throw new UserMistake('give one file: slidewire paper PAPER.yaml --out DIR');
    const out = resolve(needed(flags['out'], 'say where the paper goes: --out DIR'));
    const kinds = kindsOf(flags['as']);
    refuseFull(out);
    const file = basename(path);
    const { text, notices } = decodeText(bytes(path), file);
    const order = readPaper(text, file);
    const random = streams(order.seed ?? crypto.randomUUID());
    const usedFile = order.used === undefined ? undefined : resolve(dirname(path), order.used);
    const used = readUsed(usedFile);
    const { plan, notices: ofClass } = planOf(order, path, random, new Set(used));
    for (const notice of [...notices, ...ofClass]) process.stderr.write(`${notice}\n`);
    const versions = inFile(file, () => makePaper(plan, random));
    const written = writtenPaper(order, versions);
    await wholeFolder(out, (partial) => fill(partial, written, kinds));
    if (usedFile !== undefined) await addUsed(usedFile, used, keysOf(versions));
    const kind = plan.isClass ? 'candidates' : versions.length === 1 ? 'version' : 'versions';
    process.stdout.write(`${versions.length} ${kind}, ${versions[0]!.items.length} questions of ${written.page.table.total} marks each: ${out}\n`);
  },
};

/** Versions of another paper must not lie among those of this one. */
function refuseFull(folder: string): void {
  mendFolder(folder);
  if (existsSync(folder) && readdirSync(folder).length > 0) throw new UserMistake([{ file: folder, what: 'the folder is there and is not empty; choose another with --out, or remove it' }]);
}

type Kind = (typeof KINDS)[number];

function kindsOf(value: unknown): readonly Kind[] {
  const asked = value === undefined ? KINDS : [value].flat();
  for (const kind of asked) if (!(KINDS as readonly unknown[]).includes(kind)) throw new UserMistake([{ field: '--as', what: `"${String(kind)}" is none of ${KINDS.join(', ')}` }]);
  return asked as readonly Kind[];
}

/** Mistakes of what the file asks for, with its name. */
function inFile<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof UserMistake) throw new UserMistake(error.mistakes.map((mistake) => ({ file, ...mistake })));
    throw error;
  }
}

function writtenPaper(order: PaperOrder, versions: readonly Version[]): WrittenPaper {
  const { words, ...content } = contentOf();
  const { title, time, paper: size, instructions = words.usual, sd, decimal } = order;
  const table = markTable(versions[0]!.items.map(({ entry }) => entry));
  const print = { language: LANGUAGE, paper: size, size: order.size, decimal };
  const page = { title, time, instructions, deviation: words.deviation[sd]!, table, print, words: { ...content.shared.headings, ...words, tags: content.shared.tags } };
  return { versions, views: versions.map((version, v) => versionView(version, v, content)), page };
}

function contentOf() {
  const words = loadPaperWords(LANGUAGE);
  const read = new Map<string, ReturnType<typeof loadFamilyWords>>();
  const wordsOf = (family: string) => {
    const found = read.get(family) ?? loadFamilyWords(LANGUAGE, family);
    read.set(family, found);
    return found;
  };
  return { wordsOf, shared: loadQuestionWords(LANGUAGE), figures: loadFigureWords(LANGUAGE), stories: words.stories, parts: words.parts, words };
}

async function fill(folder: string, written: WrittenPaper, kinds: readonly Kind[]): Promise<void> {
  await mkdir(join(folder, 'teacher'), { recursive: true });
  for (const [name, content] of Object.entries(writeExports(written, kinds))) await writeFile(join(folder, 'teacher', name), content);
  if (!kinds.includes('print')) return;
  await mkdir(join(folder, 'candidates'), { recursive: true });
  const press = await openPress();
  try {
    await printPaper(folder, written, press);
  } finally {
    await press.close();
  }
}
