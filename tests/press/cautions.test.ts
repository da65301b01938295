import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { experiments } from '../../generators/experiments/index.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { openPress, type Press } from '../../generators/press/print.ts';
import { describeUnless, describeWith } from '../outside.ts';
import { documentsOf, issuesOf, known } from '../sheets/class.ts';
import { run } from './outside.ts';

const found = await findBrowser().catch(() => undefined);

describeUnless(found ? [] : ['a browser'], 'the last page of a worksheet', () => {
  describeWith(['pdftotext'], 'in print', () => {
    let press: Press;
    const folder = mkdtempSync(join(tmpdir(), 'cautions-test-'));
    beforeAll(async () => void (press = await openPress({ found: found! })));
    afterAll(async () => {
      await press.close();
      rmSync(folder, { recursive: true });
    });

    test.each(Object.keys(experiments).flatMap((id) => ['A4', 'Letter'].map((paper) => ({ id, paper }))))('does not hold the cautions alone, which stand together: $id, $paper', async ({ id, paper }) => {
      const order = readOrder(`experiment: ${id}\npaper: ${paper}\n`, 'order.yaml', known);
      const [html] = (await documentsOf(order, issuesOf(order).slice(0, 1), 'worksheet')).values();
      const pdf = join(folder, 'one.pdf');
      const { pages } = await press.print(html!, pdf);
      const texts = run('pdftotext', '-layout', pdf, '-').split('\f').slice(0, pages);
      const last = texts.at(-1)!.split('\n').map((line) => line.trim()).filter((line) => line !== '');
      const heading = last.indexOf('Cautions');
      expect(heading, last.slice(0, 5).join(' / ')).toBeGreaterThan(0);
    });
  });
});
