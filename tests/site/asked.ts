import type { Page } from 'puppeteer-core';
import { loadFamilyWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { loadSiteWords } from '../../generators/cli/content.ts';
import type { QuestionSiteWords } from '../../generators/cli/site/question-page.ts';
import { type Worded, questionFillings, worded } from '../../generators/practice/questions/fillings.ts';
import { type PracticeQuestion, type Wish, makeQuestion } from '../../generators/practice/questions/make-question.ts';
import type { SetCode } from '../../generators/practice/set-code.ts';
import { familyNamed } from '../../generators/questions/index.ts';

const shared = loadQuestionWords('en');
export const siteWords = loadSiteWords('en')['questions'] as unknown as QuestionSiteWords;

/** What Node makes of a set of a family, and what its page should show. */
export function asked(id: string, code: SetCode, wish?: Wish): { made: PracticeQuestion; inWords: Worded; text: string } {
  const made = makeQuestion(familyNamed(id), code, wish);
  const words = { family: loadFamilyWords('en', id), shared, answers: siteWords };
  const inWords = worded(made, words);
  return { made, inWords, text: textOf(questionFillings(made, inWords, words)['question']!) };
}

const SIGNS: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'" };

/** What a reader sees of HTML. */
const textOf = (html: string) => html.replace(/<[^>]*>/g, '').replace(/&[a-z#0-9]+;/g, (sign) => SIGNS[sign] ?? sign);

/** What stands in an element of the page. */
export const textAt = (page: Page, selector: string) => page.$eval(selector, (element) => element.textContent);

/** Writes a value into a place as a student does: sign by its button, mantissa and power of ten apart where there are two fields. */
export async function write(page: Page, key: string, text: string): Promise<void> {
  const holder = (await page.$(`[data-place="${key}"]`))!;
  const [, mantissa = text, power] = /^(.*)e(-?\d+)$/.exec(text) ?? [];
  const [first, second] = await holder.$$('input');
  const fields = second && power !== undefined ? [[first!, mantissa] as const, [second, power] as const] : [[first!, text] as const];
  for (const [input, value] of fields) {
    await input.click({ count: 3 });
    await input.press('Backspace');
    await input.type(value);
  }
  await page.keyboard.press('Tab');
}

export const markAt = (page: Page, key: string) => textAt(page, `[data-place="${key}"] .mark`);

export const saidAt = (page: Page, key: string) => page.$eval(`[data-place="${key}"]`, (place) => place.closest('.block')!.querySelector('[data-said]')!.textContent);
