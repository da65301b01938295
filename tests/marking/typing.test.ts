import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { prepareMarking } from '../../generators/cli/prepare-marking.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readAnswers } from '../../generators/marking/answers-file.ts';
import { markClass } from '../../generators/marking/mark-class.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { streams } from '../../generators/random.ts';
import { scratch } from '../cli/slidewire.ts';
import { classOf, practical } from './classes.ts';
import { simulate } from './simulated-class.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { at } = scratch();
const words = loadMarkingWords('en');

describe.each(['resistivity', 'interchange'])('%s: the page for typing answers', (id) => {
  const made = classOf(30, `experiment: ${id}\n`, 'typing');
  const experiment = experimentNamed(id);
  let browser: Browser;
  let page: Page;
  const asked: string[] = [];

  beforeAll(async () => {
    await prepareMarking(at(id), made.order, made.issues);
    browser = await launch(await findBrowser());
    page = await browser.newPage();
    page.on('request', (request) => asked.push(request.url()));
    page.on('pageerror', (error) => asked.push(String(error)));
    await page.goto(`file://${at(id, 'typing.html')}`);
  });
  afterAll(() => browser.close());

  const exported = async () => (await page.evaluate(`document.getElementById('text').value`)) as string;

  test('takes answers by keyboard alone, adds the unit, says at once how each stands, and exports a file that is marked', async () => {
    const [issue] = made.issues;
    const { unit } = made.columns[0]!;
    for (const key of '3.21') await page.keyboard.press(key as '3');
    await page.keyboard.press('Space');
    expect(await page.evaluate(`document.getElementById('says-0').textContent`)).toBe(words.typing.wrong);
    await page.keyboard.press('Enter');
    for (const key of '-') await page.keyboard.press(key as '-');
    await page.keyboard.press('ArrowDown');
    for (const key of 'abc') await page.keyboard.press(key as 'a');
    expect(await page.evaluate(`document.getElementById('says-2').textContent`)).toBe(words.typing.unreadable);
    for (let i = 0; i < 3; i++) await page.keyboard.press('Backspace');
    await page.keyboard.press('PageDown');
    expect(await page.evaluate(`document.getElementById('code').textContent`)).toBe(made.issues[1]!.code);
    const { rows } = readAnswers(new TextEncoder().encode(await exported()), 'answers.csv', made.issues, { columns: made.columns, symbols: loadWords('en', id).spoken.symbols, heads: words.heads, decimal: 'point' });
    expect(rows).toHaveLength(30);
    expect(rows[0]).toMatchObject({ issue, texts: [`3.21 ${unit}`, '-', ...made.columns.slice(2).map(() => '')] });
  });

  test('agrees with what is marked in 97 of 100 answers of a class with slips, at least, where it does not leave them open', async () => {
    const rows = simulate(experiment, made, streams('typing').of(id));
    const marked = markClass(experiment, made.issues, rows, made.columns, practical);
    const looks = (await page.evaluate(`slidewireSheets.map((sheet, i) => slidewireLooks(sheet, ${JSON.stringify(rows.map(({ texts }) => texts))}[i]))`)) as string[][];
    const pairs = marked.flatMap(({ answers }, i) => answers.map(({ verdict, value, column }, k) => ({ verdict, value, id: column.id, look: looks[i]![k]! }))).filter(({ verdict }) => verdict !== 'absent');
    const differing = pairs.filter(({ verdict, look }) => look !== words.typing.open && (verdict === 'wrong') !== (look === words.typing.wrong));
    if (differing.length > 0.03 * pairs.length) expect(differing).toEqual([]);
    expect(pairs.length).toBeGreaterThan(150);
  });

  test('asks for nothing but itself, and is read out as it should be', async () => {
    await page.evaluate(axe);
    const found = (await page.evaluate('axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + " " + nodes[0].html))')) as string[];
    expect(found).toEqual([]);
    expect(asked).toEqual([expect.stringMatching(/^file:.*typing\.html$/)]);
  });
});
