import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type BrowserFound, findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { openPress, type Press } from '../../generators/press/print.ts';
import { templates } from '../../generators/press/templates.ts';
import { documentsOf, issuesOf, orderOf } from '../sheets/class.ts';
import { describeUnless, describeWith } from '../outside.ts';
import { run } from './outside.ts';

const found = await findBrowser().catch(() => undefined);
const describePrinted = (title: string, body: (found: BrowserFound) => void) => describeUnless(found ? [] : ['a browser'], title, () => body(found!));

/** A document of a pack by the end of its name. */
async function documentOf(more: string, name: string): Promise<string> {
  const order = orderOf(more);
  const documents = await documentsOf(order, issuesOf(order));
  return [...documents].find(([file]) => file.includes(name))![1];
}

describe('a sentence with blanks', () => {
  const filled = (sentence: string, blanks: object) => templates().renderString('{{ sentence | prose(blanks) }}', { sentence, blanks });

  test('takes outside text as text', () => expect(filled('The wire is {a}.', { a: '<b>&' })).toBe('The wire is &lt;b&gt;&amp;.'));

  test('keeps a stop at the formula before it, and a unit at its number', () => {
    expect(filled('It is {a}, or not', { a: { tex: 'X', spoken: 'X' } })).toMatch(/^It is <span class="tied"><span[^]*<\/span>,<\/span> or not$/);
    expect(filled('from {low} cm to 60 mm', { low: '40' })).toBe('from 40\u00a0cm to 60\u00a0mm');
  });

  test('leaves room for what the student finds, its unit beside it', () => {
    expect(filled('It is {a}.', { a: { unit: { tex: '\\mathrm{cm}', spoken: 'centimetres' } } })).toMatch(/<span class="blank"><\/span> <span class="plain">cm<\/span>\./);
  });

  test('with an unknown blank is an error, and so is an unknown word of a template', () => {
    expect(() => filled('It is {b}.', {})).toThrow('no word for the blank {b}');
    expect(() => templates().renderString('{{ words.nothing }}', { words: {} })).toThrow();
  });
});

describe('blank readings', () => {
  const order = orderOf('readings: blank\n');
  const draws = issuesOf(order, Array.from({ length: 90 }, (_, i) => ({ roll: String(i), name: 'N' })));
  const wire = draws[0]!.wires[0];
  const kinds = ['none', 'positive', 'negative'].map((zero) => draws.find(({ sheet, wires: [own] }) => sheet.form['zero'] === zero && own === wire)!);

  test('say nothing of what has not been read: sheets of one wire are the same whatever the simulation drew', async () => {
    expect(new Set(kinds.map(({ sheet }) => JSON.stringify(sheet.readings))).size).toBe(3);
    const printed = await Promise.all(
      kinds.map(async (issue) => [...(await documentsOf(order, [{ ...issue, roll: '1', code: 'AAAA-AAAA' }]))].find(([file]) => file.includes('single/worksheet'))![1]),
    );
    expect(new Set(printed).size).toBe(1);
  });
});

describePrinted('pages', (browser) => {
  describeWith(['pdftotext'], 'in print', () => {
    let press: Press;
    const folder = mkdtempSync(join(tmpdir(), 'templates-test-'));
    beforeAll(async () => void (press = await openPress({ found: browser })));
    afterAll(async () => {
      await press.close();
      rmSync(folder, { recursive: true });
    });
    const pagesOf = async (more: string, name: string) => {
      const pdf = join(folder, 'one.pdf');
      const { pages } = await press.print(await documentOf(more, name), pdf);
      const texts = run('pdftotext', '-layout', pdf, '-').split('\f').slice(0, pages);
      return { pages, lines: texts.map((text) => text.split('\n').filter((line) => line.trim() !== '').length) };
    };

    test.each(['A4', 'Letter'].flatMap((paper) => [3, 6].map((rows) => ({ paper, rows }))))('a practice sheet is one page: $paper, $rows rows', async ({ paper, rows }) => {
      expect((await pagesOf(`sections: practice\npaper: ${paper}\nrows: ${rows}\ntables: yes\n`, 'worksheet-1')).pages).toBe(1);
    });

    test('a full record is four pages of A4, its key three', async () => {
      expect((await pagesOf('', 'worksheet-1')).pages).toBe(4);
      expect((await pagesOf('', 'key-1')).pages).toBe(3);
    });

    test.each(['A4', 'Letter'].flatMap((paper) => ['normal', '18pt', '24pt'].map((size) => ({ paper, size }))))('no page holds a lonely line: $paper, $size', async ({ paper, size }) => {
      for (const name of ['worksheet-1', 'key-1']) {
        const { lines } = await pagesOf(`paper: ${paper}\nsize: ${size}\n`, name);
        for (const count of lines) expect(count, `${name} ${lines}`).toBeGreaterThan(5);
      }
    });
  });

  describe('nothing reaches over the edge of the paper', () => {
    let opened: Browser;
    beforeAll(async () => void (opened = await launch(browser)));
    afterAll(() => opened.close());
    /** Millimetres between the margins, upright and across: the margins of styles/page.css.njk, 15 mm or 17 mm each. */
    const WIDTHS = { A4: { upright: 210, across: 297 }, Letter: { upright: 215.9, across: 279.4 } };

    async function beyond(html: string, width: number): Promise<string[]> {
      const page = await opened.newPage();
      await page.setViewport({ width: Math.round((width * 96) / 25.4), height: 1000 });
      await page.emulateMediaType('print');
      await page.setContent(html);
      const out = await page.evaluate(() => {
        const edge = document.documentElement.clientWidth;
        return Array.from(document.querySelectorAll('.sheet *'))
          .filter((element) => element.getBoundingClientRect().right > edge + 0.5)
          .map((element) => `${element.tagName} ${element.textContent?.trim().slice(0, 40)}`);
      });
      await page.close();
      return out;
    }

    test.each((['A4', 'Letter'] as const).flatMap((paper) => ['normal', '18pt', '24pt'].map((size) => ({ paper, size }))))('$paper, $size', async ({ paper, size }) => {
      const margins = size === 'normal' ? 34 : 30;
      const upright = WIDTHS[paper].upright - margins;
      const more = `paper: ${paper}\nsize: ${size}\nrows: 6\n`;
      for (const name of ['worksheets', 'keys', 'solutions']) expect(await beyond(await documentOf(more, name), upright)).toEqual([]);
      expect(await beyond(await documentOf(more, 'marking-grid'), WIDTHS[paper].across - margins)).toEqual([]);
      expect(await beyond(await documentOf(`${more}reasons: yes\n`, 'keys'), upright)).toEqual([]);
      expect(await beyond(await documentOf(`${more}reasons: yes\n`, 'marking-grid'), WIDTHS[paper].across - margins)).toEqual([]);
      expect(await beyond(await documentOf(`${more}readings: blank\n`, 'cards'), upright)).toEqual([]);
      expect(await beyond(await documentOf(`${more}drawn: scale plugs gauge rule\n`, 'worksheets'), upright)).toEqual([]);
    });
  });
});
