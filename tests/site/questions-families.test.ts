import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { questionPages } from '../../generators/cli/site/question-site.ts';
import type { PracticeQuestion } from '../../generators/practice/questions/make-question.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { round } from '../../generators/quantities/written.ts';
import { families } from '../../generators/questions/index.ts';
import { sentenceText } from '../../generators/questions/view.ts';
import { asked, markAt, saidAt, siteWords, textAt } from './asked.ts';
import { type Built, builtOf, openPage } from './built.ts';

const IDS = families.map(({ id }) => id);
const DEFAULT = setCode(1);

let built: Built;
beforeAll(async () => {
  built = await builtOf({ experiments: [], myReadings: false, families });
}, 180_000);
afterAll(() => built.close());

/** Puts a text into a place at once, for runs through all pages; those below type. */
const put = (page: Page, key: string, text: string) =>
  page.$eval(`[data-place="${key}"]`, (holder, written) => {
    const [, mantissa = written, power] = /^(.*)e(-?\d+)$/.exec(written) ?? [];
    const [first, second] = Array.from(holder.querySelectorAll('input'));
    first!.value = second && power !== undefined ? mantissa : written;
    if (second) second.value = power ?? '';
    first!.dispatchEvent(new Event('change', { bubbles: true }));
  }, text);

/** Writes and chooses every answer of a question; gives where their marks are. */
async function answer(page: Page, { question: { answers, verdicts } }: PracticeQuestion): Promise<string[]> {
  for (const { id, shown } of answers) await put(page, `${id}:0`, shown);
  for (const [line, choice] of Object.entries(verdicts)) await page.click(`[data-verdict="${line}:0"] input[value="${choice}"]`);
  return [...answers.map(({ id }) => `[data-place="${id}:0"] .mark`), ...Object.keys(verdicts).map((line) => `[data-verdict="${line}:0"] .mark`)];
}

const marks = (page: Page, selectors: readonly string[]) => Promise.all(selectors.map((selector) => textAt(page, selector)));

/** An answer in which a slip shows, and what it makes of it. */
function shownIn(answers: Readonly<Record<string, number>>, { question }: PracticeQuestion): [string, number] {
  return Object.entries(answers).find(([id, wrong]) => {
    const { exact } = question.answers.find((one) => one.id === id)!;
    return Math.abs(wrong - exact) > 0.01 * Math.abs(exact);
  })!;
}

describe('the page of every family', () => {
  it('takes the answers alone, keeps them over a reload, names each slip of its set, and fits a phone', { timeout: 240_000 }, async () => {
    const page = await openPage(built, built.file('questions.html'), { width: 390 });
    for (const id of IDS) {
      const { made, inWords, text } = asked(id, DEFAULT);
      await page.goto(built.file(`questions/${id}.html`));
      expect(await textAt(page, '[data-slot="question"]'), id).toBe(text);
      const written = await answer(page, made);
      expect(written.length, id).toBeGreaterThan(0);
      expect(new Set(await marks(page, written)), id).toEqual(new Set(['right']));
      await page.reload();
      expect(new Set(await marks(page, written)), id).toEqual(new Set(['right']));
      for (const { id: slip, answers } of made.question.slips) {
        await page.$eval('[data-do="clear"]', (button) => (button as HTMLElement).click());
        const [find, value] = shownIn(answers, made);
        await put(page, `${find}:0`, round(value, { figures: 4 }, 'even'));
        expect(await markAt(page, `${find}:0`), `${id}, ${slip}`).toBe('look again');
        expect(await saidAt(page, `${find}:0`), `${id}, ${slip}`).toContain(sentenceText(inWords.slips[slip]!));
      }
      const width = await page.evaluate(() => {
        document.querySelectorAll('details').forEach((details) => (details.open = true));
        const button = document.querySelector<HTMLElement>('[data-do="open-line"]');
        while (button && !button.hidden) button.click();
        return document.documentElement.scrollWidth;
      });
      expect(width, id).toBeLessThanOrEqual(390);
      expect(page.complaints, id).toEqual([]);
    }
    await page.browserContext().close();
  });

  it('shows without scripts a question with its key, and what needs scripts', { timeout: 120_000 }, async () => {
    const page = await openPage(built, built.file('questions.html'), { script: false });
    for (const id of IDS) {
      await page.goto(built.file(`questions/${id}.html`));
      expect(await textAt(page, '[data-slot="question"]'), id).toBe(asked(id, DEFAULT).text);
      expect(await page.$eval('.without-script', (note) => (note as HTMLElement).innerText)).toContain('Without scripts');
      await page.click('details.key summary');
      expect(await page.$eval('[data-slot="key"]', (key) => (key as HTMLElement).innerText), id).not.toBe('');
      expect(await page.$$eval('button, select, input:not([type="radio"])', (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).map((each) => each.outerHTML)), id).toEqual([]);
    }
    await page.browserContext().close();
  });

  it('has less than 60 kB of scripts, compressed, and less than 300 kB with fonts and all', () => {
    const compressed = (file: string) => gzipSync(readFileSync(join(built.folder, file))).length;
    const common = ['notebook.css', ...readdirSync(join(built.folder, 'fonts')).map((font) => join('fonts', font))].reduce((sum, file) => sum + compressed(file), 0);
    for (const id of IDS) {
      const scripts = compressed('look.js') + compressed('questions/engine.js') + compressed(`questions/${id}.js`);
      expect(scripts, id).toBeLessThan(60_000);
      expect(common + compressed(`questions/${id}.html`) + scripts, id).toBeLessThan(300_000);
    }
  });
});

describe('the catalogue of questions', () => {
  it('tells all that a family asks apart, and lets students pick every arrangement but the topic', () => {
    for (const { family, asks, arrangements } of questionPages(families, 'en', siteWords)) {
      expect(new Set(asks.map(({ label }) => label)).size, family.id).toBe(asks.length);
      expect(arrangements.map(({ name }) => name), family.id).toEqual(Object.keys(family.choices ?? {}).filter((name) => name !== 'topic'));
    }
  });

  it('lists every family with a sample, what is asked and a link, without scripts', async () => {
    const page = await openPage(built, built.file('index.html'), { script: false });
    await page.click('header nav a[href="questions.html"]');
    await page.waitForSelector('h1');
    const links = await page.$$eval('main li a', (all) => all.map((link) => link.getAttribute('href')));
    expect(links.toSorted()).toEqual(IDS.map((id) => `questions/${id}.html`).sort());
    const shown = await textAt(page, 'main');
    for (const id of IDS) expect(shown, id).toContain(asked(id, DEFAULT).text);
    await page.browserContext().close();
  });
});
