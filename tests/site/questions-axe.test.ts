import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { familyNamed } from '../../generators/questions/index.ts';
import { axeFinds } from '../axe.ts';
import { type Built, builtOf, openPage } from './built.ts';

/** One page of each make: lines to be opened, rows and powers of ten, a number with a choice, a choice alone. */
const IDS = ['shunt', 'diameter-report', 'gauge', 'viva'];

let built: Built;
beforeAll(async () => {
  built = await builtOf({ experiments: [], myReadings: false, families: IDS.map(familyNamed) });
}, 180_000);
afterAll(() => built.close());

const look = (page: Page, chosen: 'light' | 'dark') => page.evaluate((name) => void (document.documentElement.dataset['look'] = name), chosen);

/** Opens all that can be opened, and has a wrong value and a choice answered. */
function openAll(): void {
  document.querySelectorAll('details').forEach((details) => (details.open = true));
  const opener = document.querySelector<HTMLElement>('[data-do="open-line"]');
  while (opener && !opener.hidden) opener.click();
  const input = document.querySelector<HTMLInputElement>('[data-place] input');
  if (input) input.value = '77777';
  input?.dispatchEvent(new Event('change', { bubbles: true }));
  document.querySelector<HTMLElement>('[data-verdict] input')?.click();
}

describe('pages of questions', () => {
  it('have nothing that axe finds, in the light and in the dark, with every line open and what is wrong answered', { timeout: 120_000 }, async () => {
    const page = await openPage(built, built.file('index.html'));
    for (const name of IDS) {
      await page.goto(built.file(`questions/${name}.html`));
      await page.evaluate(openAll);
      await look(page, 'light');
      expect(await axeFinds(page), name).toEqual([]);
      await look(page, 'dark');
      // In the dark nothing but the colours is different.
      expect(await axeFinds(page, 'colours'), name).toEqual([]);
      expect(page.complaints, name).toEqual([]);
    }
    await page.browserContext().close();
  });
});
