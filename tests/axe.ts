import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'puppeteer-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe-core finds on a page as it stands, each rule with the first element that breaks it; only the contrast of colours where nothing else has changed since it last looked. */
export async function axeFinds(page: Page, of: 'everything' | 'colours' = 'everything'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe);
  const only = of === 'colours' ? ", runOnly: ['color-contrast']" : '';
  // A page's own policy forbids that its style sheets are fetched once more.
  const preload = "preload: document.querySelector('link[rel=stylesheet]') === null";
  return page.evaluate(`axe.run({ ${preload}${only} }).then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))`) as Promise<string[]>;
}
