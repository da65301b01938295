import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { openPress, type Press } from '../../generators/press/print.ts';
import { describeWith } from '../outside.ts';
import { describeWithEachBrowser, isBrowser, PROC, processesBelow, run } from './outside.ts';
import { pages, sample, SHEET } from './sample.ts';

vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 }); // a browser on a busy machine takes its time

const folder = mkdtempSync(join(tmpdir(), 'print-test-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string) => join(folder, name);

await describeWithEachBrowser('print', (found) => {
  let press: Press;
  beforeAll(async () => void (press = await openPress({ found })));
  afterAll(() => press.close());

  describeWith(['pdfinfo', 'pdftotext', 'pdffonts', 'qpdf'], 'a printed sheet', () => {
    let printed: { pages: number };
    beforeAll(async () => void (printed = await press.print(sample(SHEET), at('sheet.pdf'))));
    const info = () => run('pdfinfo', at('sheet.pdf'));

    test('is a sound PDF', () => {
      expect(run('qpdf', '--check', at('sheet.pdf'))).toContain('No syntax or stream encoding errors');
    });

    test('has the paper of its @page', () => expect(info()).toMatch(/Page size:.*\(A4\)/));

    test('has the title of the document, and no date or machine in its description', () => {
      expect(info()).toMatch(/^Title: +Sample sheet$/m);
      expect(info()).not.toMatch(/Date|Linux|Windows|Macintosh/);
    });

    test('names its language', () => {
      expect(run('qpdf', '--json=2', '--json-key=qpdf', at('sheet.pdf'))).toContain('"/Lang": "u:en-GB"');
    });

    test('is tagged: headings, caption, column headings, formula with its words', () => {
      expect(info()).toMatch(/^Tagged: +yes$/m);
      const tree = run('pdfinfo', '-struct-text', at('sheet.pdf'));
      expect(tree).toMatch(/H1[^]*"Wire K"[^]*H2[^]*"Readings"[^]*Table[^]*Caption[^]*"Balance lengths"/);
      expect(tree.match(/TH .*\n +\/Scope \/Column/g)).toHaveLength(2);
      expect(tree.match(/TD:\n +\/Headers \[\(node\d+\)\]/g)).toHaveLength(2);
      expect(tree).toContain('Figure');
      expect(run('qpdf', '--json=2', '--json-key=qpdf', at('sheet.pdf'))).toContain('"/Alt": "u:X equals R over l"');
    });

    test('has an outline of its headings', () => {
      const outlines = JSON.parse(run('qpdf', '--json=2', '--json-key=outlines', at('sheet.pdf'))).outlines;
      expect(outlines[0].title).toBe('Wire K');
      expect(outlines[0].kids[0].title).toBe('Readings');
    });

    test('embeds its fonts, the one of the document among them and no other', () => {
      const fonts = run('pdffonts', at('sheet.pdf')).trim().split('\n').slice(2);
      expect(fonts.join()).toContain('STIXTwoMath');
      for (const font of fonts) {
        expect(font).toMatch(/^(\w+\+STIXTwoMath|\[none\] +Type 3)/);
        expect(font).toMatch(/ yes (yes|no ) +(yes|no) +\d+ +0$/);
      }
    });

    test('holds its text', () => {
      // Letters of a formula come as mathematical italics; NFKC makes them plain.
      const text = run('pdftotext', '-layout', at('sheet.pdf'), '-').normalize('NFKC');
      for (const word of ['Wire K', 'Balance lengths', '43.2', 'X', '=']) expect(text).toContain(word);
    });

    test('counts its pages as pdfinfo does', async () => {
      expect(printed.pages).toBe(1);
      expect(await press.print(pages(19), at('19.pdf'))).toEqual({ pages: 19 });
      expect(run('pdfinfo', at('19.pdf'))).toMatch(/^Pages: +19$/m);
    });

    test('takes another title when one is given', async () => {
      await press.print(sample(SHEET), at('title.pdf'), { title: 'Répertoire (12) \\' });
      expect(run('pdfinfo', at('title.pdf'))).toMatch(/^Title: +Répertoire \(12\) \\$/m);
    });

    test('shows nothing made by a script', async () => {
      const script = '<script>document.title = "ran"; document.body.append("ran")</script>';
      await press.print(sample(`${SHEET}${script}<img src="data:," alt="" onerror="document.title = 'ran'">`), at('script.pdf'));
      expect(run('pdfinfo', at('script.pdf'))).toMatch(/^Title: +Sample sheet$/m);
      expect(run('pdftotext', at('script.pdf'), '-')).not.toContain('ran');
    });
  });

  describe('nothing differs between two prints', () => {
    const bytes = (name: string) => readFileSync(at(name));
    const document = pages(5);
    beforeAll(() => press.print(document, at('first.pdf')));

    test('a second later, after other documents, by the same browser', async () => {
      await press.print(pages(2), at('other.pdf'));
      await new Promise((go) => setTimeout(go, 1000));
      await press.print(document, at('second.pdf'));
      expect(bytes('second.pdf').equals(bytes('first.pdf'))).toBe(true);
    });

    test('by another process of the same browser, two documents at once', async () => {
      const other = await openPress({ found, workers: 2 });
      const names = ['third.pdf', 'fourth.pdf', 'fifth.pdf'];
      await Promise.all(names.map((name) => other.print(document, at(name))));
      await other.close();
      for (const name of names) expect(bytes(name).equals(bytes('first.pdf'))).toBe(true);
    });
  });

  describe('nothing comes from outside', () => {
    let server: Server;
    let asked: (string | undefined)[];
    const url = (path: string) => `http://127.0.0.1:${(server.address() as AddressInfo).port}/${path}`;
    beforeAll(async () => {
      server = createServer((request, response) => {
        asked.push(request.url);
        response.end();
      });
      await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    });
    afterAll(() => void server.close());

    test.each([
      ['a picture', () => `<img src="${url('a.png')}" alt="">`],
      ['a picture by name', () => `<img src="${url('a.png').replace('127.0.0.1', 'localhost')}" alt="">`],
      ['a style sheet', () => `<link rel="stylesheet" href="${url('a.css')}">`],
      ['a frame', () => `<iframe src="${url('a.html')}" title="a"></iframe>`],
      ['a file', () => `<img src="file://${at('first.pdf')}" alt="">`],
    ])('%s is refused, named, never asked for, and what was printed before stays', async (_, body) => {
      asked = [];
      writeFileSync(at('kept.pdf'), 'before');
      await expect(press.print(sample(body()), at('kept.pdf'))).rejects.toThrow(/carries everything inside itself.*\/(a\.|first)/);
      expect(asked).toEqual([]);
      expect(readFileSync(at('kept.pdf'), 'utf8')).toBe('before');
    });

    test('hints to connect ahead are not followed', async () => {
      let connections = 0;
      server.on('connection', () => connections++);
      const hints = ['preconnect', 'dns-prefetch', 'prefetch'].map((rel) => `<link rel="${rel}" href="${url('a')}">`);
      await press.print(sample(hints.join('')), at('hints.pdf')).catch(() => undefined);
      expect(connections).toBe(0);
    });
  });

  test('a font that cannot be read is an error that names it', async () => {
    const attempt = press.print(sample(SHEET, { font: 'AAAA' }), at('font.pdf'));
    await expect(attempt).rejects.toThrow('fonts of this document cannot be read: Sheet maths');
  });

  test('a folder that is missing is an error, and nothing half-written lies anywhere', async () => {
    await expect(press.print(sample(SHEET), at('missing/sheet.pdf'))).rejects.toThrow('ENOENT');
    expect(readdirSync(folder).filter((name) => !name.endsWith('.pdf'))).toEqual([]);
  });

  test.skipIf(!PROC)('closing ends the browser, and printing after it is an error', async () => {
    const browsers = () => processesBelow(process.pid).filter(isBrowser);
    const before = browsers();
    const brief = await openPress({ found });
    expect(browsers()).toHaveLength(before.length + 1);
    await brief.close();
    expect(browsers()).toEqual(before);
    await expect(brief.print(sample(SHEET), at('closed.pdf'))).rejects.toThrow('the press is closed');
  });
});
