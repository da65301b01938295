import { existsSync, readFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { UserMistake } from '../mistake.ts';
import { type PaperPage, type PaperWords, answersHtml, versionHtml } from '../press/paper-documents.ts';
import { openPress } from '../press/print.ts';
import { wholeFolder } from '../press/whole-folder.ts';
import { markTable, unmet } from '../questions/demands.ts';
import { csv } from '../questions/export.ts';
import { type Version, keyOf, makeVersions } from '../questions/paper.ts';
import { type PaperQuestionView, versionView } from '../questions/paper-view.ts';
import { streams } from '../random.ts';
import { readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { type PaperFile, readPaperFile } from './paper-file.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from './question-words.ts';

const OUT = { name: 'out', many: false, takes: 'a folder', meaning: 'where the paper goes' };
const LANGUAGE = 'en';

export const paper: Command = {
  usage: 'paper PAPER.yaml --out DIR',
  about: 'a question paper in parallel versions, a mark scheme each, and the answers of all on a page',
  help: () => `slidewire ${paper.usage}\n    ${paper.about}\n\n  --${OUT.name}  ${OUT.meaning}\n        takes ${OUT.takes}`,
  async run(args) {
    const { flags, positionals } = readCommandLine(args, [OUT]);
    const [path] = positionals;
    const out = flags['out'];
    if (path === undefined || positionals.length > 1) throw new UserMistake('name one paper file: slidewire paper PAPER.yaml --out DIR');
    if (typeof out !== 'string') throw new UserMistake('say where the paper goes: --out DIR');
    const asked = readPaperFile(path);
    const usedFile = asked.used === undefined ? undefined : resolve(dirname(path), asked.used);
    const used = usedKeys(usedFile);
    const names = Array.from({ length: asked.versions }, (_, i) => String.fromCharCode(65 + i));
    const versions = makeVersions(asked.items, names, streams(asked.seed ?? crypto.randomUUID()), new Set(used));
    const table = markTable(versions[0]!);
    const mistakes = unmet(table, asked.marks as Parameters<typeof unmet>[1]).map((mistake) => ({ file: basename(path), ...mistake }));
    if (mistakes.length > 0) throw new UserMistake(mistakes);
    await write(resolve(out), asked, versions, table);
    if (usedFile !== undefined) await writeFile(usedFile, `${JSON.stringify([...used, ...versions.flatMap(({ questions }) => questions.map(({ question }) => keyOf(question)))], null, 1)}\n`);
    process.stdout.write(`${versions.length} versions of ${table.total} marks, ${versions[0]!.questions.length} questions each: ${out}\n`);
  },
};

/** Questions of earlier papers, which are not asked again. */
function usedKeys(file: string | undefined): string[] {
  if (file === undefined || !existsSync(file)) return [];
  try {
    const keys = JSON.parse(readFileSync(file, 'utf8')) as unknown;
    if (Array.isArray(keys) && keys.every((key) => typeof key === 'string')) return keys;
  } catch {
    // Told below, with what to do.
  }
  throw new UserMistake([{ file: basename(file), what: 'this is no list of used questions; name the file that an earlier paper wrote, or one that is not there yet' }]);
}

async function write(out: string, asked: PaperFile, versions: readonly Version[], table: PaperPage['table']): Promise<void> {
  const shared = loadQuestionWords(LANGUAGE);
  const words = { ...shared.headings, tags: shared.tags, ...loadPaperWords(LANGUAGE) } as PaperWords;
  const page: PaperPage = {
    title: asked.title,
    time: asked.time,
    instructions: asked.instructions ?? words.usual,
    deviation: words.deviation[asked.sd]!,
    table,
    print: { language: LANGUAGE, paper: asked.paper, size: asked.size },
    words,
  };
  const views = versions.map((version) => ({ name: version.name, questions: versionView(version, (family) => loadFamilyWords(LANGUAGE, family), shared) }));
  await wholeFolder(out, (partial) => fill(partial, page, views));
}

type Views = { name: string; questions: PaperQuestionView[] }[];

async function fill(folder: string, page: PaperPage, views: Views): Promise<void> {
  for (const whose of ['candidates', 'teacher']) await mkdir(join(folder, whose), { recursive: true });
  const press = await openPress();
  try {
    for (const { name, questions } of views) {
      await press.print(versionHtml(page, 'paper', name, questions), join(folder, 'candidates', `paper-${name}.pdf`));
      await press.print(versionHtml(page, 'scheme', name, questions), join(folder, 'teacher', `mark-scheme-${name}.pdf`));
    }
    await press.print(answersHtml(page, views), join(folder, 'teacher', 'answers.pdf'));
  } finally {
    await press.close();
  }
  await writeFile(join(folder, 'teacher', 'questions.csv'), csv(views));
  await writeFile(join(folder, 'teacher', 'questions.json'), `${JSON.stringify({ format: 1, title: page.title, marks: page.table, versions: views }, null, 1)}\n`);
}
