import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { axeFinds } from '../axe.ts';
import { packHtml } from './pack-html.ts';


describe('axe finds nothing on any page of a pack', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch(await findBrowser());
  }, 60_000);
  afterAll(() => browser.close());

  async function violations(html: string): Promise<string[]> {
    const page = await browser.newPage();
    await page.setContent(html);
    const found = await axeFinds(page);
    await page.close();
    return found;
  }

  it.each(['sections: record\n', 'sections: practice\nsize: 18pt\n', 'readings: blank\n', 'drawn: scale gauge\n'])('%j', { timeout: 120_000 }, async (order) => {
    const documents = [...(await packHtml(order))].filter(([name]) => !name.includes('single/') || name.includes('-1-'));
    for (const [name, html] of documents) expect(await violations(html), name).toEqual([]);
  });

  it('finds a planted fault', async () => {
    expect(await violations('<!doctype html><html><title>x</title><img src="data:,">')).not.toEqual([]);
  });
});
