import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch } from '../../generators/press/launch.ts';
import { demoAsks, hands } from '../experiments/demo.ts';
import { describeWithEachBrowser } from '../press/outside.ts';
import { setsInBits } from './bits.ts';

const SETS = 200;
const asks = hands.flatMap((which) => [...demoAsks({ hands: which }), ...demoAsks({ hands: which, gap: 'right', rows: 6 })]);

/** The bench and its experiment as one script for a page, which calls it `bits`. */
async function script(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL('bits.ts', import.meta.url))],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    globalName: 'bits',
  });
  return outputFiles[0]!.text;
}

await describeWithEachBrowser('in a page', (found) => {
  let page: Page;
  beforeAll(async () => {
    page = await (await launch(found)).newPage();
    await page.evaluate(`${await script()}; globalThis.bits = bits`);
  });
  afterAll(() => page.browser().close());

  test('200 sets have the same bits as in Node', async () => {
    const there = (await page.evaluate(`bits.setsInBits(${JSON.stringify(asks)}, ${SETS})`)) as string[];
    expect(there).toHaveLength(SETS);
    expect(there).toEqual(setsInBits(asks, SETS));
  });
});
