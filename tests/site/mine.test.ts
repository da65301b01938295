import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../generators/cli/site/build-site.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { type Built, builtSite, openPage } from './built.ts';

let built: Built;
beforeAll(async () => {
  built = await builtSite('resistivity');
}, 180_000);
afterAll(() => built.close());

/** Types a reading, or an answer, and leaves its field. */
async function type(page: Page, selector: string, text: string): Promise<void> {
  await page.$eval(selector, (input) => (input as HTMLInputElement).select());
  await page.type(selector, text);
  await page.keyboard.press('Tab');
}

const reading = (key: string) => `[data-reading="${key}"]`;
const said = (page: Page) => page.$eval('[data-agree]', (text) => text.textContent!);
const ROWS = [['2.0', '43.2'], ['2.5', '48.7'], ['3.0', '53.3']] as const;

async function withRows(rows: readonly (readonly [string, string])[]): Promise<Page> {
  const page = await openPage(built, built.file('my-readings/resistivity.html'));
  for (const [row, [R, l]] of rows.entries()) {
    await type(page, reading(`R:${row}`), R);
    await type(page, reading(`l:${row}`), l);
  }
  return page;
}

describe('my readings', () => {
  it('says that rows agree and which R to take next, and checks the working on them', { timeout: 60_000 }, async () => {
    const page = await withRows(ROWS);
    expect(await said(page)).toContain('The rows agree.');
    expect(await said(page)).toMatch(/R to take next: [\d.]+ Ω/);
    await type(page, '[data-place="X:0"] input', '2.63');
    expect(await page.$eval('[data-place="X:0"] .mark', (mark) => mark.textContent)).toBe('right');
    await type(page, '[data-place="X:1"] input', '2.37');
    expect(await page.$eval('[data-said]', (text) => text.textContent)).toContain('The ratio of the two lengths is upside down.');
    expect(await page.$('[data-place="rho:0"] input')).toBeNull();
    await page.reload();
    expect(await page.$eval('[data-place="X:0"] .mark', (mark) => mark.textContent)).toBe('right');
    await page.browserContext().close();
  });

  it('names a row that does not fit, a null outside the window, and what no instrument shows', { timeout: 60_000 }, async () => {
    const astray = await withRows([...ROWS, ['3.4', '48.0']]);
    expect(await said(astray)).toMatch(/Row 4: X does not fit the other rows/);
    await type(astray, reading('l:3'), '80.1');
    expect(await said(astray)).toContain('Row 4: the null point lies outside 40 cm to 60 cm.');
    await type(astray, reading('l:3'), '143');
    expect(await said(astray)).toMatch(/^l, row 4 .*is not on the bridge wire/);
    for (const text of ['two', '0.48 m']) {
      await type(astray, reading('l:3'), text);
      expect(await said(astray)).toBe('l, row 4: this cannot be read. Write the number alone, without its unit.');
    }
    await astray.browserContext().close();
  });

  it('sends nothing: no request leaves the page while readings are typed', async () => {
    const page = await openPage(built, built.http('my-readings/resistivity.html'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    // What the browser still fetches of the site itself, its icon say, is over before anything is typed.
    await page.waitForNetworkIdle();
    const asked: string[] = [];
    page.on('request', (request) => void asked.push(request.url()));
    await type(page, reading('R:0'), '2.0');
    await type(page, reading('l:0'), '43.2');
    expect(asked).toEqual([]);
    await page.browserContext().close();
  });

  it('can be left out, with every link to it', { timeout: 60_000 }, async () => {
    const folder = mkdtempSync(join(tmpdir(), 'slidewire-site-'));
    await buildSite(folder, 'en', { experiments: [experiments['resistivity']!], myReadings: false });
    expect(existsSync(join(folder, 'my-readings.html'))).toBe(false);
    expect(existsSync(join(folder, 'my-readings'))).toBe(false);
    expect(readFileSync(join(folder, 'index.html'), 'utf8')).not.toContain('my-readings');
    rmSync(folder, { recursive: true, force: true });
  });
});
