import type { Order } from '../order/schema.ts';
import type { MarkTable } from '../questions/demands.ts';
import type { PaperQuestionView } from '../questions/paper-view.ts';
import { documentHtml } from './documents.ts';
import { templates } from './templates.ts';

/** Words of a paper's pages. */
export interface PaperWords {
  [heading: string]: unknown;
  usual: string[];
  forms: Record<string, string>;
  levels: Record<string, string>;
  tags: Record<string, string>;
  deviation: Record<string, string>;
}

export interface PaperPage {
  title: string;
  time: string;
  instructions: readonly string[];
  deviation: string;
  table: MarkTable;
  print: Pick<Order, 'language' | 'paper' | 'size'>;
  words: PaperWords;
}

type Page = Record<string, unknown>;

function document({ print, title, words }: PaperPage, page: Page): string {
  return documentHtml(templates(), { order: { ...print, sections: [] }, title, words, experiment: {} }, [page]);
}

/** A candidate's paper, or its mark scheme. */
export function versionHtml(paper: PaperPage, kind: 'paper' | 'scheme', version: string, questions: readonly PaperQuestionView[]): string {
  const { title, time, instructions, deviation, table } = paper;
  return document(paper, { template: kind, title, time, instructions, deviation, version, total: table.total, questions, foot: `${title} · ${version}` });
}

/** The answers of all versions side by side, and the marks by topic, difficulty and form. */
export function answersHtml(paper: PaperPage, versions: readonly { name: string; questions: readonly PaperQuestionView[] }[]): string {
  const rows = versions[0]!.questions.map(({ number }, i) => ({ number, cells: versions.map(({ questions }) => cell(questions[i]!)) }));
  return document(paper, { template: 'paper-answers', title: paper.title, versions, rows, table: tableLines(paper), deviation: paper.deviation, foot: paper.title });
}

function cell({ view, options }: PaperQuestionView): Page {
  const letter = options.find(({ isRight }) => isRight)?.letter;
  return { pieces: view.answers, letter, say: letter === undefined ? view.verdicts[0]?.say : undefined };
}

function tableLines({ table, words }: PaperPage): { name: string; marks: number }[] {
  const named = (part: Record<string, number>, names: Record<string, string>) => Object.entries(part).map(([name, marks]) => ({ name: names[name] ?? name, marks }));
  return [...named(table.topics, words.tags), ...named(table.levels, words.levels), ...named(table.forms, words.forms), { name: String(words['marksInAll']), marks: table.total }];
}
