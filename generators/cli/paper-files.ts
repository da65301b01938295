import { join } from 'node:path';
import { csv } from '../papers/export/csv.ts';
import { questions, questionsJsonSchema } from '../papers/export/data.ts';
import { qtiPackage } from '../papers/export/qti-package.ts';
import type { Version } from '../papers/paper.ts';
import type { VersionView } from '../papers/view.ts';
import { type PaperPage, answersHtml, versionsHtml } from '../press/paper-documents.ts';
import type { Press } from '../press/print.ts';
import { zip } from '../press/zip.ts';

export interface WrittenPaper {
  versions: readonly Version[];
  views: readonly VersionView[];
  page: PaperPage;
}

/** Candidates' papers in one document: longer ones cost the browser more than their share. */
const IN_ONE = 15;

/** Prints papers, mark schemes and answers: a document for each version, or the candidates of a class in parts. */
export async function printPaper(folder: string, { views, page }: WrittenPaper, press: Press): Promise<void> {
  for (const { name, some } of documents(views)) {
    await press.print(versionsHtml(page, 'paper', some), join(folder, 'candidates', `paper-${name}.pdf`));
    await press.print(versionsHtml(page, 'scheme', some), join(folder, 'teacher', `mark-scheme-${name}.pdf`));
  }
  await press.print(answersHtml(page, views), join(folder, 'teacher', 'answers.pdf'));
}

function documents(views: readonly VersionView[]): { name: string; some: readonly VersionView[] }[] {
  if (views[0]!.roll === undefined) return views.map((view) => ({ name: view.name, some: [view] }));
  return Array.from({ length: Math.ceil(views.length / IN_ONE) }, (_, i) => ({ name: String(i + 1), some: views.slice(i * IN_ONE, (i + 1) * IN_ONE) }));
}

/** The questions for other programs, by file name. */
export function writeExports({ versions, views, page }: WrittenPaper, kinds: readonly string[]): Record<string, string | Uint8Array> {
  const data = questions(page.title, page.deviation, page.table, versions, views);
  const json = (value: unknown) => `${JSON.stringify(value, null, 1)}\n`;
  return {
    ...(kinds.includes('csv') && { 'questions.csv': csv(data) }),
    ...(kinds.includes('json') && { 'questions.json': json(data), 'questions.schema.json': json(questionsJsonSchema()) }),
    ...(kinds.includes('qti') && { 'questions-qti.zip': zip(qtiPackage(data, views, page.print.language, page.words)) }),
  };
}
