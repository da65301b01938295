import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import type { PaperWords } from '../press/paper-documents.ts';
import type { FamilyWords, QuestionWords } from '../questions/words.ts';

const folder = fileURLToPath(new URL('../../content/', import.meta.url));

const yaml = (path: string): unknown => parse(readFileSync(`${folder}${path}.yaml`, 'utf8'));

/** The words of one language for one family. */
export function loadFamilyWords(language: string, family: string): FamilyWords {
  return yaml(`${language}/questions/${family}`) as FamilyWords;
}

/** The words that all families share. */
export function loadQuestionWords(language: string): QuestionWords {
  return { ...(yaml(`${language}/questions`) as Omit<QuestionWords, 'spoken'>), spoken: yaml(`${language}/spoken`) as QuestionWords['spoken'] };
}

/** The words of a question paper's pages. */
export function loadPaperWords(language: string): PaperWords {
  return yaml(`${language}/paper`) as PaperWords;
}
