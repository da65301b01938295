import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PracticeWords } from '../../practice/page/data.ts';
import type { Family } from '../../questions/family.ts';
import { loadMarkingWords } from '../marking-content.ts';
import { loadFamilyWords, loadQuestionWords } from '../question-words.ts';
import { engineScript, familyScript } from './question-bundle.ts';
import { type QuestionPage, type QuestionSiteWords, questionPage } from './question-page.ts';

/** The pages of families, as templates show them. */
export function questionPages(families: readonly Family[], language: string, words: QuestionSiteWords): QuestionPage[] {
  const shared = loadQuestionWords(language);
  return families.map((family) => questionPage(family, loadFamilyWords(language, family.id), shared, words));
}

interface Topic {
  name: string;
  families: QuestionPage[];
}

/** The pages, and the one catalogue of them by topic, in the order in which content names the topics; none where there are no pages. */
export function catalogue(questions: readonly QuestionPage[], language: string): { questions: readonly QuestionPage[]; catalogue: Topic[][] } {
  const topics = Object.entries(loadQuestionWords(language).tags).map(([tag, name]) => ({ name, families: questions.filter(({ topic }) => topic === tag) }));
  return { questions, catalogue: questions.length > 0 ? [topics.filter(({ families }) => families.length > 0)] : [] };
}

/** The script that all families share, and one for each of them. */
export async function writeQuestionScripts(folder: string, questions: readonly QuestionPage[], words: { practice: PracticeWords; questions: QuestionSiteWords }, language: string): Promise<void> {
  if (questions.length === 0) return;
  const { start, progress, done, row, choose, accept, hints, lookAgain } = words.questions;
  const engine = engineScript({
    practice: { ...words.practice, start, progress, done },
    answers: { row, choose, accept, hints, lookAgain },
    questions: loadQuestionWords(language),
    plain: loadMarkingWords(language).plain,
  });
  await mkdir(join(folder, 'questions'), { recursive: true });
  const write = async (name: string, text: Promise<string>) => writeFile(join(folder, 'questions', `${name}.js`), await text);
  await Promise.all([write('engine', engine), ...questions.map((one) => write(one.family.id, familyScript(one)))]);
}
