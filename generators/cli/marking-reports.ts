import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type nunjucks from 'nunjucks';
import { type ClassMarks, classPage } from '../marking/class-report.ts';
import { feedbackSlip } from '../marking/feedback.ts';
import type { MarkingWords } from '../marking/words.ts';
import type { Order } from '../order/schema.ts';
import { bodyHtml } from '../press/documents.ts';
import { facesFor } from '../press/fonts.ts';
import type { Press } from '../press/print.ts';
import { templates } from '../press/templates.ts';
import type { Words } from './content.ts';

export interface ReportWork {
  folder: string;
  order: Order;
  marks: ClassMarks;
  words: Words;
  said: MarkingWords;
  /** Feedback slips on a page. */
  per: 2 | 4;
}

/** A document holds about so many pages: longer ones cost the browser more than their share. */
const PART_PAGES = 100;

/** Writes the feedback slips and the class page as HTML; gives their files, without '.html', with what stands in each. */
export async function writeReports(work: ReportWork): Promise<{ file: string; html: string }[]> {
  const made: { file: string; html: string }[] = [];
  for (const { file, html } of reports(work)) {
    await writeFile(join(work.folder, `${file}.html`), html);
    made.push({ file, html });
  }
  return made;
}

/** Prints what `writeReports` gave. */
export async function printReports(folder: string, made: readonly { file: string; html: string }[], press: Press): Promise<void> {
  for (const { file, html } of made) await press.print(html, join(folder, `${file}.pdf`));
}

function* reports({ order, marks, words, said, per }: ReportWork): Generator<{ file: string; html: string }> {
  const environment = templates();
  const title = `${words.experiment.title}${order.title && ` · ${order.title}`}`;
  const labels = { ...said.heads, row: said.feedback.row };
  const common = { order, title, labels };
  yield { file: 'class', html: documentHtml(environment, { ...common, words: said.class }, [classPage(marks, words.spoken, said)]) };
  const slips = marks.students.filter(({ absent }) => !absent);
  for (let from = 0; from < slips.length; from += per * PART_PAGES) {
    const part = slips.slice(from, from + per * PART_PAGES).map((student) => feedbackSlip(student, marks.programFor(student), words.spoken, said));
    const pages = Array.from({ length: Math.ceil(part.length / per) }, (_, i) => ({ template: 'feedback', foot: '', per, slips: part.slice(i * per, (i + 1) * per) }));
    yield { file: `feedback-${from / (per * PART_PAGES) + 1}`, html: documentHtml(environment, { ...common, words: said.feedback }, pages) };
  }
}

interface Settings {
  order: Order;
  title: string;
  labels: Record<string, string>;
  words: Record<string, string>;
}

/** One document whole in itself, as the sheets are. */
function documentHtml(environment: nunjucks.Environment, { order, ...told }: Settings, pages: readonly object[]): string {
  const settings = { lang: order.language, ...told, pages, print: { ...order, orientation: 'portrait', short: true } };
  const body = bodyHtml(environment, 'marking/body.njk', settings, order.decimal);
  const faces = facesFor(body.replace(/<math[^]*?<\/math>|<[^>]*>/g, ''));
  const families = ['STIX Two Text', ...faces.map(({ family }) => family), 'STIX Two Math'].map((family) => `'${family}'`).join(', ');
  return environment.render('marking/document.njk', { ...settings, body, faces, typefaces: `${families}, serif` });
}
