import type { QuestionView } from '../questions/view.ts';
import type { QuestionWords } from '../questions/words.ts';
import { documentHtml } from './documents.ts';
import { templates } from './templates.ts';

/** One question with its working as a document that is whole in itself. */
export function solvedHtml(view: QuestionView, { headings }: QuestionWords, language: string): string {
  const marks = `${view.marks} ${view.marks === 1 ? headings['mark'] : headings['marks']}`;
  const order = { language, paper: 'A4' as const, size: 'normal' as const, sections: [] };
  return documentHtml(templates(), { order, title: view.title, words: headings, experiment: {} }, [{ template: 'solved', view, marks, foot: '' }]);
}
