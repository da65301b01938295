import { createHash } from 'node:crypto';
import { copyFile, mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { extname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import Eleventy from '@11ty/eleventy';
import type { Experiment } from '../../experiments/experiment.ts';
import { experiments } from '../../experiments/index.ts';
import { makeSet } from '../../practice/make-set.ts';
import { placesOf } from '../../practice/places.ts';
import type { MineWords } from '../../practice/page/data.ts';
import { MATHS_CUT } from '../../press/maths-face.ts';
import type { Family } from '../../questions/family.ts';
import { families } from '../../questions/index.ts';
import { symbolLine } from '../../quantities/working.ts';
import type { Verdict } from '../../quantities/step.ts';
import { programOf } from '../../sheets/issue.ts';
import { labelIn, unitLine } from '../../sheets/record.ts';
import { worksheetView } from '../../sheets/view.ts';
import { loadFigureWords, loadSiteWords, loadTables, loadWords } from '../content.ts';
import { loadMarkingWords } from '../marking-content.ts';
import { benchView, ruleView } from './bench-view.ts';
import { type InstrumentsWords, instrumentsView, writeInstrumentsScript } from './instruments-view.ts';
import { type ChoiceWords, groupsOf } from './groups.ts';
import { faultsScript, mineScript, pageScript, practiceScript } from './bundle.ts';
import { type SiteWords as ExperimentWords, faultsWords, pageWords } from './page-words.ts';
import { DEFAULT_SET, type PracticePage, practicePage } from './practice-page.ts';
import type { QuestionSiteWords } from './question-page.ts';
import { catalogue, questionPages, writeQuestionScripts } from './question-site.ts';
import { reference } from './reference.ts';
import { siteTemplates } from './site-templates.ts';

const require = createRequire(import.meta.url);
const templates = fileURLToPath(new URL('../../../templates/', import.meta.url));

const WHOLE: SiteContents = { experiments: Object.values(experiments), myReadings: true, families };

/** The words of the site's pages. */
type SiteWords = Record<string, unknown> & ExperimentWords & InstrumentsWords & { mine: MineWords; questions: QuestionSiteWords; experiments: ChoiceWords };

/** What a site holds. */
export interface SiteContents {
  experiments: readonly Experiment[];
  /** Pages on which students work readings that they really took. */
  myReadings: boolean;
  /** Families that have a page of questions; none where left out. */
  families?: readonly Family[];
}

/** Writes the whole site into a folder. */
export async function buildSite(folder: string, language: string, { experiments: of, myReadings, families: asked = [] }: SiteContents = WHOLE): Promise<void> {
  const tables = loadTables();
  const site = loadSiteWords(language) as unknown as SiteWords;
  const marking = loadMarkingWords(language);
  const figures = loadFigureWords(language);
  const practice = of.map((experiment) => practicePage(experiment, tables, loadWords(language, experiment.id), marking));
  await mkdir(join(folder, 'experiments'), { recursive: true });
  const questions = questionPages(asked, language, site.questions);
  const mine = myReadings ? practice.filter(canBeTaken) : [];
  const listed = practice.map((one) => withLists(one, site));
  await writePages(folder, {
    site,
    language,
    // The pages that every page names, in this order.
    pages: ['experiments', 'instruments', ...(questions.length > 0 ? ['questions'] : []), ...(mine.length > 0 ? ['my-readings'] : []), 'reference', 'about'],
    practice: listed.filter(({ isFinished }) => !isFinished),
    faults: listed.filter(({ isFinished }) => isFinished),
    groups: groupsOf(listed, site.experiments),
    mine: mine.map((one) => withLists(one, site)),
    reference: reference(tables, practice),
    instruments: instrumentsView(tables.bench, site, figures),
    ...catalogue(questions, language),
  });
  await writeScripts(folder, { practice, mine }, site, language);
  await writeQuestionScripts(folder, questions, site, language);
  await writeInstrumentsScript(folder, tables.bench, site, figures);
  await writeLook(folder);
  await writeOffline(folder);
}

/** Lists that the template walks: working beyond the record, and the key. */
function withLists(one: PracticePage, site: SiteWords): PracticePage & Record<string, unknown> {
  const { experiment, kit, page, words } = one;
  const { layout } = experiment;
  const { sheet } = makeSet(experiment, kit, DEFAULT_SET);
  const program = programOf(experiment, sheet);
  const inRecord = new Set(page.view.observations.flatMap((block) => (block.is === 'table' ? [...block.columns, ...block.after] : block.is === 'values' ? block.fields : [])).map(({ id }) => id));
  const places = placesOf(program, layout, sheet);
  const { cases } = worksheetView(sheet, program, experiment, words.spoken, true);
  return {
    ...one,
    ...(one.hasRule && { ruleView: ruleView(Math.max(...kit.wires.map(({ length }) => length))) }),
    onBench: one.bench && benchView(one.bench, layout.circuit!, site.bench),
    // What a page for readings that are still to be taken leaves open.
    cases,
    choices: Object.fromEntries((layout.decided ?? []).map(({ choice, cases: told }) => [choice, ['none', ...told]])),
    materials: kit.wires.map(({ accepted }, place) => ({ place, name: accepted.material })).filter(({ name }, place, all) => all.findIndex((each) => each.name === name) === place),
    rest: [...new Set(places.map(({ id }) => id))].filter((id) => !inRecord.has(id)).map((id) => ({ id, symbol: symbolLine(program, id, words.spoken), unit: unitLine(program.step(id).unit, words.spoken) })),
    keys: places.map(({ id, row, key }) => {
      const { per } = program.step(id);
      const label = per === undefined ? undefined : labelIn(layout.observations, per, row);
      return { key, symbol: symbolLine(program, id, words.spoken), row: label ? `${label.number}${label.direction ? ` ${label.direction}` : ''}` : '' };
    }),
    verdicts: Object.keys(one.slots).filter((slot) => slot.startsWith('verdict:')),
    choicesToMake: program.steps.flatMap((step) => (step.kind === 'verdict' ? choicesOf(one, step) : [])),
  };
}

/** A choice that the student makes, once or in every row: in a few words from a list where content has them, else among sentences. */
function choicesOf({ experiment, words, ready, slots }: PracticePage, { id, per, choices }: Verdict): object[] {
  const brief = (words.experiment['brief'] as Record<string, Record<string, string>> | undefined)?.[id];
  const sentences = ready.verdicts[id];
  if (!brief && !sentences) return [];
  const rows = Object.keys(slots).filter((slot) => slot.startsWith(`verdict:${id}:`)).length;
  const label = (row: number) => (per === undefined ? undefined : labelIn(experiment.layout.observations, per, row));
  return Array.from({ length: rows }, (_, row) => ({
    key: `${id}:${row}`,
    label: label(row),
    isBrief: brief !== undefined,
    choices: choices.map((value) => ({ value, words: brief?.[value] ?? sentences?.[value] ?? value })),
  }));
}

/** Eleventy lays the templates out; what it reads and writes is told here, so that no other configuration is looked for. */
async function writePages(folder: string, data: Readonly<Record<string, unknown>>): Promise<void> {
  const here = (path: string) => relative(process.cwd(), path) || '.';
  const eleventy = new Eleventy(here(join(templates, 'site')), here(folder), {
    quietMode: true,
    configPath: '',
    config(config) {
      // Installed as a package, the templates lie below node_modules, which is ignored by default.
      config.ignores.delete('**/node_modules/**');
      config.setUseGitIgnore(false);
      config.setLibrary('njk', siteTemplates());
      for (const [name, value] of Object.entries(data)) config.addGlobalData(name, value);
    },
  });
  eleventy.disableLogger();
  await eleventy.write();
}

/** Whether its readings can be taken on a real bridge and typed in: every table is of one bridge and one wire. */
function canBeTaken({ experiment, kit }: PracticePage): boolean {
  return experiment.readingsGiven !== true && experiment.wires === 1 && experiment.layout.circuit === 'bridge' && Object.keys(kit.conventions.drawn).length === 0;
}

async function writeScripts(folder: string, { practice, mine }: { practice: readonly PracticePage[]; mine: readonly PracticePage[] }, words: SiteWords, language: string): Promise<void> {
  await writeFile(join(folder, 'look.js'), await pageScript('look'));
  const marking = loadMarkingWords(language);
  const write = async (path: string, { experiment: { id } }: PracticePage, text: Promise<string>) => writeFile(join(folder, path, `${id}.js`), await text);
  const scriptOf = (one: PracticePage) => (one.isFinished ? faultsScript(one, faultsWords(one, words, marking)) : practiceScript(one, pageWords(one, words, marking)));
  await Promise.all(practice.map((one) => write('experiments', one, scriptOf(one))));
  if (mine.length > 0) await mkdir(join(folder, 'my-readings'), { recursive: true });
  await Promise.all(mine.map((one) => write('my-readings', one, mineScript(one, { ...pageWords({ ...one, hasBench: false, hasGauge: false, hasRule: false }, words, marking), mine: words.mine }))));
}

/** The worker that keeps the site, which is to know all its files; it goes last. */
async function writeOffline(folder: string): Promise<void> {
  const all = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = all.filter((each) => each.isFile()).map((each) => relative(folder, join(each.parentPath, each.name)).split(sep).join('/')).filter((name) => extname(name) !== '').sort();
  const digest = createHash('sha256');
  for (const file of files) digest.update(file).update(await readFile(join(folder, file)));
  const shared = files.filter((name) => !name.includes('/') || name.startsWith('fonts/') || name === 'questions/engine.js');
  const list = JSON.stringify({ files, shared, digest: digest.digest('hex').slice(0, 16) });
  await writeFile(join(folder, 'offline.js'), `self.slidewireFiles=${list};\n${await pageScript('offline')}`);
}

const TEXT = '@fontsource/stix-two-text/files/stix-two-text';
const FONTS: Readonly<Record<string, string>> = {
  text: require.resolve(`${TEXT}-latin-400-normal.woff2`),
  'text-italic': require.resolve(`${TEXT}-latin-400-italic.woff2`),
  'text-bold': require.resolve(`${TEXT}-latin-700-normal.woff2`),
  greek: require.resolve(`${TEXT}-greek-400-normal.woff2`),
  math: MATHS_CUT,
};

/** One after the other they are the style sheet of all pages. */
const STYLES = ['notebook', 'bench', 'notebook-media'];

async function writeLook(folder: string): Promise<void> {
  await mkdir(join(folder, 'fonts'), { recursive: true });
  for (const [name, file] of Object.entries(FONTS)) await copyFile(file, join(folder, 'fonts', `${name}.woff2`));
  await copyFile(join(templates, 'notebook', 'icon.svg'), join(folder, 'icon.svg'));
  const styles = await Promise.all(STYLES.map((name) => readFile(join(templates, 'styles', `${name}.css`), 'utf8')));
  await writeFile(join(folder, 'notebook.css'), styles.join(''));
}
