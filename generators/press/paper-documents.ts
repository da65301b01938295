import type { Order } from '../order/schema.ts';
import type { PartWords } from '../papers/asked-view.ts';
import type { StoryWords } from '../papers/case-view.ts';
import { type MarkTable, PARTS } from '../papers/demands.ts';
import type { ItemView, PartView, VersionView } from '../papers/view.ts';
import { documentHtml } from './documents.ts';
import { templates } from './templates.ts';

/** Words of a paper's pages. */
export interface PaperWords extends Record<string, unknown> {
  usual: string[];
  forms: Record<string, string>;
  levels: Record<string, string>;
  tags: Record<string, string>;
  deviation: Record<string, string>;
  stories: Record<string, StoryWords>;
  parts: PartWords;
  correct: string;
  incorrect: string;
  tens: string;
}

/** What all pages of a paper share. */
export interface PaperPage {
  title: string;
  time: string;
  instructions: readonly string[];
  deviation: string;
  table: MarkTable;
  print: Pick<Order, 'language' | 'paper' | 'size'> & Partial<Pick<Order, 'decimal'>>;
  words: PaperWords;
}

type Page = Record<string, unknown>;

function document({ print, title, words }: PaperPage, pages: Page[], orientation: 'portrait' | 'landscape' = 'portrait'): string {
  return documentHtml(templates(), { order: { ...print, sections: [] }, title, words, experiment: {}, orientation }, pages);
}

/** Papers of candidates, or their mark schemes, one after the other in one document. */
export function versionsHtml(paper: PaperPage, kind: 'paper' | 'scheme', versions: readonly VersionView[]): string {
  const pages = versions.map((version) => ({ template: kind, ...versionPage(paper, version) }));
  return document(paper, pages);
}

function versionPage({ title, time, instructions, deviation, table, print }: PaperPage, { name, roll, items }: VersionView): Page {
  const asksDeviation = items.some(({ parts }) => parts.some(({ view }) => 'sd' in view.choice));
  const foot = `${title} · ${roll === undefined ? name : `${roll} ${name}`}`;
  return { title, time, instructions, deviation: asksDeviation ? deviation : '', version: name, roll, isOwn: roll !== undefined, total: table.total, items, awarded: awarded(items, table.total, print.size === 'normal' ? IN_A_ROW : IN_A_LARGE_ROW), foot };
}

/** Questions of a row of the examiner's table. */
const IN_A_ROW = 16;
const IN_A_LARGE_ROW = 8;

type Awarded = { number?: number; marks: number };

/** Questions with their marks and the total last, in rows that are filled up with nothing where they are more than one. */
function awarded(items: readonly ItemView[], total: number, most: number): (Awarded | false)[][] {
  const cells: Awarded[] = [...items.map(({ number, marks }) => ({ number, marks })), { marks: total }];
  const rows = Math.ceil(cells.length / most);
  const width = Math.ceil(cells.length / rows);
  return Array.from({ length: rows }, (_, row) => Array.from({ length: width }, (__, i) => cells[row * width + i] ?? false));
}

/** More columns than this lie better on a page on its side. */
const PORTRAIT_COLUMNS = 4;
/** More columns than these would run off it: of versions, which may hold a sentence, and of questions in a class. */
const MOST_VERSIONS = 7;
const MOST_QUESTIONS = 16;

/** The answers of all versions side by side, or of all candidates below each other, and the marks by topic, difficulty and form. */
export function answersHtml(paper: PaperPage, versions: readonly VersionView[]): string {
  const isClass = versions[0]!.roll !== undefined;
  const [first] = versions as [VersionView];
  const labels = first.items.flatMap(({ number, parts }) => parts.map(({ label }) => `${number} ${label}`.trim()));
  const cells = versions.map(({ items }) => items.flatMap(({ parts }) => parts.map(cell)));
  const names = versions.map(({ name, roll }) => (roll === undefined ? name : `${roll} ${name}`));
  const rows = isClass ? names.map((name, v) => ({ name, cells: cells[v]! })) : labels.map((name, q) => ({ name, cells: cells.map((column) => column[q]!) }));
  const columns = isClass ? labels : names;
  const tables = tablesOf(columns, rows, isClass ? MOST_QUESTIONS : MOST_VERSIONS);
  const page = { template: 'paper-answers', title: paper.title, isClass, tables, table: tableLines(paper), total: paper.table.total, asked: first.items.map((item) => lineOf(item, paper)), deviation: paper.deviation, foot: paper.title };
  return document(paper, [page], columns.length > PORTRAIT_COLUMNS ? 'landscape' : 'portrait');
}

/** A table cut into several of about as many columns. */
function tablesOf(columns: readonly string[], rows: readonly { name: string; cells: readonly Page[] }[], most: number): Page[] {
  const count = Math.ceil(columns.length / most);
  const cut = <T>(list: readonly T[], i: number): T[] => list.slice(Math.round((i * list.length) / count), Math.round(((i + 1) * list.length) / count));
  return Array.from({ length: count }, (_, i) => ({ columns: cut(columns, i), rows: rows.map(({ name, cells }) => ({ name, cells: cut(cells, i) })) }));
}

function cell({ view, options }: PartView): Page {
  const letter = options.find(({ isRight }) => isRight)?.letter;
  return { pieces: letter === undefined ? view.answers : [], letter, say: letter === undefined ? view.verdicts[0]?.say : undefined };
}

/** What each question is, for the setter. */
function lineOf({ number, topic, level, form, marks, parts }: ItemView, { words }: PaperPage): Page {
  return { number, title: parts.map(({ view }) => view.title).join('; '), topic: words.tags[topic] ?? topic, level: words.levels[level], form: words.forms[form], marks };
}

function tableLines({ table, words }: PaperPage): { part: unknown; lines: { name: string; marks: number }[] }[] {
  const names = { topics: words.tags, levels: words.levels, forms: words.forms };
  const headings = { topics: words['topic'], levels: words['level'], forms: words['form'] };
  return PARTS.map((part) => ({ part: headings[part], lines: Object.entries(table[part]).sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, marks]) => ({ name: names[part][name] ?? name, marks })) }));
}
