import { fileURLToPath } from 'node:url';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle } from '../../generators/cli/site/bundle.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { readyFormulas } from '../../generators/practice/ready-formulas.ts';
import { setsInBits } from './bits.ts';
import { finished, pageOf, practised } from './pages.ts';

const CODES = Array.from({ length: 12 }, (_, i) => 83_000 * i + 5);

describe('practice sets in a page', () => {
  let page: Page;
  beforeAll(async () => {
    const here = fileURLToPath(new URL('./', import.meta.url));
    const contents = `
      import { experiments } from '../../generators/experiments/index.ts';
      import { provideFormulas } from '../../generators/practice/formula.ts';
      import { setsInBits } from './bits.ts';
      provideFormulas(${readyFormulas(finished.flatMap((id) => pageOf(id).programs))});
      globalThis.sets = (id, kit, codes) => setsInBits(experiments[id], kit, codes);`;
    const script = await bundle({ stdin: { contents, resolveDir: here, loader: 'ts' } });
    page = await (await launch(await findBrowser())).newPage();
    await page.evaluate(script);
  });
  afterAll(() => page.browser().close());

  it.each([...practised, ...finished])('of %s have the same bits as in Node', async (id) => {
    const { experiment, kit } = pageOf(id);
    expect(await page.evaluate(`sets(${JSON.stringify(id)}, ${JSON.stringify(kit)}, ${JSON.stringify(CODES)})`)).toEqual(setsInBits(experiment, kit, CODES));
  });
});
