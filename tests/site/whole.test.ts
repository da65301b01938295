import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { setCode } from '../../generators/practice/set-code.ts';
import { practised, setOf } from '../practice/pages.ts';
import { type Built, builtSite, openPage } from './built.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** One page of each make: with a bench and tables, with drawings, with a graph. */
const LOOKED_AT = ['resistivity', 'gauge-drill', 'graph'];

let built: Built;
let pages: string[];
beforeAll(async () => {
  built = await builtSite(...practised);
  pages = (readdirSync(built.folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.html')).sort();
}, 180_000);
afterAll(() => built.close());

const text = (file: string) => readFileSync(join(built.folder, file), 'utf8');
const compressed = (file: string) => gzipSync(readFileSync(join(built.folder, file))).length;

describe('the site', () => {
  it('has its pages, and every link and file that they name', () => {
    const others = pages.filter((page) => !page.startsWith('my-readings/'));
    expect(others).toEqual([...practised.map((id) => `experiments/${id}.html`), 'about.html', 'experiments.html', 'index.html', 'my-readings.html', 'reference.html'].sort());
    expect(pages).toContain('my-readings/resistivity.html');
    for (const page of pages) {
      const named = [...text(page).matchAll(/(?:href|src)="([^"#]+)"/g)].map(([, link]) => link!);
      expect(named.length).toBeGreaterThan(4);
      for (const link of named) expect(() => text(join(dirname(page), link)), `${page}: ${link}`).not.toThrow();
    }
  });

  it('asks nobody else for anything, and lets no page do so', () => {
    for (const file of readdirSync(built.folder, { recursive: true }) as string[]) {
      if (!/\.(?:html|css|js)$/.test(file)) continue;
      expect(text(file), file).not.toMatch(/(?:src|href)=["']?(?:https?:)?\/\/|url\(["']?(?:https?:)?\/\/|import\(|\bXMLHttpRequest\b|sendBeacon/);
      expect(text(file), file).not.toMatch(/new Function|\beval\(/);
    }
    for (const page of pages) {
      expect(text(page)).toContain("default-src 'none'; script-src 'self'; style-src 'self'");
      expect(text(page), page).not.toMatch(/<script(?![^>]* src=)|<style|<script[^>]*type="module"/);
    }
  });

  it('keeps the scripts of a page below 60 kB compressed, and a first visit with its fonts below 300 kB', () => {
    const always = ['look.js', 'notebook.css', ...readdirSync(join(built.folder, 'fonts')).map((font) => join('fonts', font))];
    const common = always.reduce((sum, file) => sum + compressed(file), 0);
    for (const page of pages.filter((each) => each.includes('/'))) {
      const scripts = compressed(page.replace('.html', '.js')) + compressed('look.js');
      expect(scripts, page).toBeLessThan(60_000);
      expect(common + compressed(page) + scripts, page).toBeLessThan(300_000);
    }
  });

  it('makes on every page the set that Node makes, and judges it', { timeout: 120_000 }, async () => {
    const page = await openPage(built, built.file('index.html'));
    for (const id of practised) {
      await page.goto(built.file(`experiments/${id}.html#${setCode(777)}`));
      const { set, places, right } = setOf(id, setCode(777));
      const shown = await page.$$eval('[data-slot^="read:"]', (slots) => Object.fromEntries(slots.map((slot) => [(slot as HTMLElement).dataset['slot'], slot.textContent ?? ''])) as Record<string, string>);
      for (const [slot, text] of Object.entries(shown)) {
        const [, step, row] = slot.split(':');
        const written = [set.sheet.readings[step!]!].flat()[Number(row)]!;
        expect(text.replaceAll('−', '-').replace(' × 10', '×10'), `${id} ${slot}`).toContain(written.split('e')[0]);
      }
      const fields = await page.$$eval('[data-place]', (holders) => holders.map((holder) => (holder as HTMLElement).dataset['place']!));
      expect(fields.sort(), id).toEqual(places.map(({ key }) => key).sort());
      await page.evaluate((name, texts) => localStorage.setItem(name, texts), `slidewire:practice:${id}:${setCode(777)}`, JSON.stringify(right));
      await page.reload();
      expect(new Set(await page.$$eval('[data-place] .mark', (marks) => marks.map((mark) => mark.textContent))), id).toEqual(new Set(['right']));
      expect(page.complaints, id).toEqual([]);
    }
    await page.browserContext().close();
  });

  it.each(['light', 'dark'])('has nothing that axe finds in the %s, with its key and questions open', { timeout: 180_000 }, async (look) => {
    for (const name of pages.filter((each) => !each.includes('/') || LOOKED_AT.some((id) => each.endsWith(`/${id}.html`)))) {
      const page = await openPage(built, built.file(name));
      await page.evaluate((chosen) => {
        document.documentElement.dataset['look'] = chosen;
        document.querySelectorAll('details').forEach((details) => (details.open = true));
        document.querySelector<HTMLElement>('.plug')?.click();
      }, look);
      const [input] = await page.$$('[data-place] input');
      await input?.type('77.77');
      await page.keyboard.press('Tab');
      await page.evaluate(axe);
      // In the dark nothing but the colours is different.
      const found = (await page.evaluate(`axe.run({ preload: false, ${look === 'light' ? '' : "runOnly: ['color-contrast']"} }).then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))`)) as string[];
      expect(found, name).toEqual([]);
      expect(page.complaints, name).toEqual([]);
      await page.browserContext().close();
    }
  });

  it('works without a connection after the first visit', { timeout: 60_000 }, async () => {
    const page = await openPage(built, built.http('index.html'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.setOfflineMode(true);
    for (const name of pages) {
      await page.goto(built.http(name));
      expect(await page.$eval('h1', (title) => title.textContent), name).not.toBe('');
    }
    await page.goto(built.http('experiments/graph.html#set-000042'));
    expect(await page.$$('[data-place] input')).not.toHaveLength(0);
    await page.browserContext().close();
  });

  it('holds no secret and nothing that makes sheet codes', () => {
    for (const file of (readdirSync(built.folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.js'))) {
      // The streams of sheets and their codes are drawn under these names.
      expect(text(file), relative(built.folder, file)).not.toMatch(/sheet code|["'`]sheet["'`]|["'`]sitting["'`]|ledger/);
    }
  });
});
