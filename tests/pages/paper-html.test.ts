import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadFigureWords } from '../../generators/cli/content.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { markTable } from '../../generators/papers/demands.ts';
import { type For, makePaper } from '../../generators/papers/paper.ts';
import { pool } from '../../generators/papers/pool.ts';
import { versionView } from '../../generators/papers/view.ts';
import { type PaperPage, answersHtml, versionsHtml } from '../../generators/press/paper-documents.ts';
import { streams } from '../../generators/random.ts';
import { wordsOf } from '../sheets/class.ts';
import { describeWith } from '../outside.ts';

const vnu = createRequire(import.meta.url)('vnu-jar') as string;

const all = pool('sample');
const everyForm = all.filter((entry, i) => entry.form === 'figure' || all.findIndex(({ form }) => form === entry.form) === i);

/** Papers, schemes and answers with an entry of every form and every figure. */
function pages(whose: readonly For[], size: PaperPage['print']['size'], decimal: 'point' | 'comma' = 'point', set = everyForm): string[] {
  const versions = makePaper({ set, pool: all, demands: {}, whose, isClass: whose[0]!.roll !== undefined, used: new Set() }, streams('pages'));
  const words = loadPaperWords('en');
  const shared = loadQuestionWords('en');
  const content = { wordsOf: (family: string) => loadFamilyWords('en', family), shared, figures: loadFigureWords('en'), stories: words.stories, parts: words.parts };
  const views = versions.map((version, v) => versionView(version, v, content));
  const page: PaperPage = { title: 'A <b>test</b> & more', time: '40 minutes', instructions: words.usual, deviation: words.deviation['sample']!, table: markTable(set), print: { language: 'en', paper: 'A4', size, decimal }, words: { ...shared.headings, ...words, tags: shared.tags } };
  return [versionsHtml(page, 'paper', views), versionsHtml(page, 'scheme', views), answersHtml(page, views)];
}

test('with a decimal comma no point is left in any number, and nothing else is another', () => {
  const point = pages([{ name: 'A' }, { name: 'B' }], 'normal');
  const comma = pages([{ name: 'A' }, { name: 'B' }], 'normal', 'comma');
  const unsigned = (html: string) => html.replace(/(\d)[.,](?=\d)/g, '$1·').replace(/[;,] /g, ', ');
  for (const [i, html] of comma.entries()) {
    expect(wordsOf(html).match(/.{0,20}\d\.\d.{0,20}/g)).toBeNull();
    expect(unsigned(html) === unsigned(point[i]!)).toBe(true);
  }
});

test('the answers of many versions stand in tables that a page is wide enough for, each version once', () => {
  const names = Array.from({ length: 20 }, (_, i) => String.fromCharCode(65 + i));
  const some = all.filter(({ question, form }) => (question === 'balance right' && form === 'numeric') || question === 'viva answer');
  const answers = pages(names.map((name) => ({ name })), 'normal', 'point', some).at(-1)!;
  const heads = answers.split('<table').map((table) => [...table.matchAll(/<th scope="col">Version (\w)<\/th>/g)].map(([, name]) => name));
  expect(heads.flat()).toEqual(names);
  expect(Math.max(...heads.map(({ length }) => length))).toBeLessThanOrEqual(7);
});

describeWith(['java'], 'pages of a question paper', () => {
  test('are valid HTML with their MathML and SVG, for versions and for candidates', { timeout: 120_000 }, () => {
    const folder = mkdtempSync(join(tmpdir(), 'slidewire-paper-'));
    try {
      const candidates = [{ name: 'Asmira <Tollun>', roll: '7' }, { name: 'Bero & Kint', roll: '8' }];
      const files = [...pages([{ name: 'A' }, { name: 'B' }], 'normal'), ...pages(candidates, '18pt')].map((html, i) => {
        writeFileSync(join(folder, `${i}.html`), html);
        return join(folder, `${i}.html`);
      });
      const { stderr, status } = spawnSync('java', ['-jar', vnu, '--errors-only', ...files], { encoding: 'utf8', maxBuffer: 1e8 });
      expect(stderr).toBe('');
      expect(status).toBe(0);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
