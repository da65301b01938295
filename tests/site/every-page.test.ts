import { readdirSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeFinds } from '../axe.ts';
import { type Built, keptOffline, openPage, wholeSite } from './built.ts';

/** A phone, a small one, and a school's screen. */
const WIDTHS = [1280, 390, 320];
/** Pages that are looked at beside each other. */
const TABS = 3;

let built: Built;
let pages: string[];
beforeAll(async () => {
  built = await wholeSite();
  pages = (readdirSync(built.folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.html')).sort();
}, 180_000);
afterAll(() => built.close());

/** Everything that can be opened is open, and something wrong is written. */
async function openAll(page: Page): Promise<void> {
  await page.$$eval('details', (all) => all.forEach((details) => ((details as HTMLDetailsElement).open = true)));
  await page.$$eval('[data-place] input', ([first]) => {
    if (!first) return;
    (first as HTMLInputElement).value = '77.77';
    first.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await page.$$eval('[data-place] select', (all) => {
    for (const select of all as HTMLSelectElement[]) {
      select.value = 'mistake';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    }
  });
}

const look = (page: Page, chosen: string) => page.evaluate((name) => void (document.documentElement.dataset['look'] = name), chosen);

/** What makes the page wider than the window; what can be moved sideways by itself does not. */
const beyond = (page: Page) =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    const isScrolled = (each: Element): boolean => each !== document.body && (getComputedStyle(each).overflowX !== 'visible' || isScrolled(each.parentElement!));
    return Array.from(document.querySelectorAll('body *')).filter((each) => each.getBoundingClientRect().right > width + 1 && !isScrolled(each.parentElement!)).map((each) => each.outerHTML.slice(0, 200));
  });

/** Does something on every page, several at once, and gathers what is found on each, so that one failure does not hide the others. */
async function foundOnEach(work: (name: string) => Promise<unknown[]>): Promise<Record<string, unknown[]>> {
  const left = [...pages];
  const found: Record<string, unknown[]> = {};
  await Promise.all(
    Array.from({ length: TABS }, async () => {
      for (let name = left.shift(); name !== undefined; name = left.shift()) {
        const here = await work(name);
        if (here.length > 0) found[name] = here;
      }
    }),
  );
  return found;
}

describe('every page', () => {
  it('opened from the folder asks for nothing outside it, fits phones and screens, and has nothing that axe finds in the light and in the dark', { timeout: 400_000 }, async () => {
    const found = await foundOnEach(async (name) => {
      const page = await openPage(built, built.file(name));
      const outside = page.asked.filter((url) => !url.startsWith(built.file('')) && !url.startsWith('data:'));
      await openAll(page);
      const wide: unknown[] = [];
      for (const width of WIDTHS) {
        await page.setViewport({ width, height: 900 });
        wide.push(...(await beyond(page)).map((element) => `${width} px: ${element}`));
      }
      await look(page, 'light');
      const light = await axeFinds(page);
      await look(page, 'dark');
      // In the dark nothing but the colours is different.
      const dark = await axeFinds(page, 'colours');
      await page.browserContext().close();
      return [...outside, ...wide, ...light, ...dark, ...page.complaints];
    });
    expect(found).toEqual({});
  });

  it('opened over http asks its own server alone, and works without a connection afterwards', { timeout: 400_000 }, async () => {
    const page = await openPage(built, built.http('index.html'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    for (const name of pages) await page.goto(built.http(name));
    await keptOffline(page, ...(readdirSync(built.folder, { recursive: true }) as string[]).filter((name) => /\.(?:html|js)$/.test(name) && name !== 'offline.js').map(built.http));
    expect(page.complaints).toEqual([]);
    expect(page.asked.filter((url) => !url.startsWith(built.http('')))).toEqual([]);
    built.connect(false);
    for (const name of pages) {
      await page.goto(built.http(name));
      expect(await page.$eval('h1', (title) => title.textContent), name).not.toBe('');
      // A page with places is brought to life by its script.
      const places = await page.$$eval('[data-place]', (all) => all.length);
      if (places > 0 && !name.startsWith('my-readings/')) expect(await page.$$eval('[data-place] :is(input, select)', (all) => all.length), name).toBeGreaterThan(0);
    }
    built.connect(true);
    await page.browserContext().close();
  });

  it('without scripts shows its text, says what needs scripts, and has no control that does nothing', { timeout: 400_000 }, async () => {
    const found = await foundOnEach(async (name) => {
      const page = await openPage(built, built.file(name), { script: false });
      const text = await page.$eval('main', (main) => (main as HTMLElement).innerText);
      // What is to be ticked can be ticked without scripts too.
      const controls = await page.$$eval('button, input:not([type="radio"]), select, textarea', (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).map((each) => each.outerHTML));
      const empty = await page.$$eval('[data-slot^="read:"], [data-slot="question"]', (slots) => slots.filter((slot) => slot.textContent === '').map((slot) => slot.outerHTML));
      const scripts = await page.$$eval('script', (all) => all.length);
      const silent = scripts > 1 && !/scripts/.test(text) ? ['says nothing of scripts'] : [];
      await page.browserContext().close();
      return [...(text.length > 100 ? [] : ['shows hardly anything']), ...controls, ...empty, ...silent];
    });
    expect(found).toEqual({});
  });
});
