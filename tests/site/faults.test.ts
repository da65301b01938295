import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FinishedSheet, mistakesIn } from '../../generators/practice/finished-record.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from '../practice/pages.ts';
import { type Built, builtSite, openPage } from './built.ts';

const CODE = setCode(48213);
const ID = 'find-the-faults';

const { set, steps, places, right } = setOf(ID, CODE);
const sheet = set.sheet as FinishedSheet;
const mistakes = mistakesIn(sheet, steps, places);

let built: Built;
beforeAll(async () => {
  built = await builtSite(ID);
}, 180_000);
afterAll(() => built.close());

const open = () => openPage(built, built.file(`experiments/${ID}.html#${CODE}`));
const choose = (page: Page, key: string, said: string) => page.select(`[data-place="${key}"] select`, said);
const judgeAll = async (page: Page) => {
  for (const { key } of places) await choose(page, key, mistakes.has(key) ? 'mistake' : 'follows');
};
const marks = (page: Page) => page.$$eval('[data-place] .mark', (all) => all.map((mark) => mark.textContent));
const mark = (page: Page, key: string) => page.$eval(`[data-place="${key}"] .mark`, (each) => each.textContent);
const progress = (page: Page) => page.$eval('[data-progress]', (each) => each.textContent);

describe('a page with a finished record', () => {
  it('shows the record that Node makes for the code, and no mistake before it is found', async () => {
    const page = await open();
    const shown = await page.$$eval('[data-slot^="wrote:"]', (slots) => slots.map((slot) => [(slot as HTMLElement).dataset['slot']!.slice('wrote:'.length), slot.textContent]));
    expect(shown.map(([key]) => key).sort()).toEqual(places.map(({ key }) => key).sort());
    for (const [key, text] of shown) {
      const [id, row] = key!.split(':') as [string, string];
      expect(text!.replaceAll('−', '-').replace(/\s?×\s?10.*/, ''), key!).toContain(sheet.finished[id]![Number(row)]!.split('e')[0]);
    }
    expect(await page.$$('.found')).toHaveLength(0);
    expect(await page.$eval('details.key', (key) => (key as HTMLDetailsElement).open)).toBe(false);
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('says at once whether a value is judged as it should be, and shows how it is worked where it is not', async () => {
    const page = await open();
    const [faulty] = mistakes.keys();
    await choose(page, faulty!, 'follows');
    expect(await mark(page, faulty!)).toBe('look again');
    const said = await page.$eval(`[data-place="${faulty}"]`, (place) => place.closest('.block')!.querySelector('[data-said]')!.textContent);
    expect(said).toContain('Work this value out by the formula');
    expect(await page.$$('[data-said] .lines p')).toHaveLength(1);
    const sound = places.find(({ key }) => !mistakes.has(key))!.key;
    await choose(page, sound, 'mistake');
    expect(await mark(page, sound)).toBe('look again');
    expect(await page.$$('.found')).toHaveLength(0);
    await page.browserContext().close();
  });

  it('asks of each mistake that is found which one it is and what should stand there, and keeps it all', { timeout: 120_000 }, async () => {
    const page = await open();
    await judgeAll(page);
    expect(new Set(await marks(page))).toEqual(new Set(['right']));
    expect(await progress(page)).toContain(`All ${places.length} values`);
    expect(await page.$$('.found')).toHaveLength(mistakes.size);
    for (const [key, names] of mistakes) {
      const line = `.found:has(#field-${key.replace(':', '-')})`;
      const others = await page.$$eval(`${line} select option`, (all) => all.map((option) => option.value));
      await page.select(`${line} select`, others.find((each) => each !== '' && !names.includes(each))!);
      expect(await page.$eval(`${line} .mark`, (each) => each.textContent), key).toBe('look again');
      await page.select(`${line} select`, names[0]!);
      const [mantissa, power] = right[key]!.split('e');
      const [first, second] = await page.$$(`${line} input`);
      await first!.type(mantissa!);
      if (power !== undefined) await second!.type(power);
      await page.keyboard.press('Tab');
    }
    const named = () => page.$$eval('.found .mark', (all) => all.map((each) => each.textContent));
    expect(new Set(await named())).toEqual(new Set(['right']));
    await page.reload();
    expect(new Set(await named())).toEqual(new Set(['right']));
    await page.$eval('details.tools', (tools) => ((tools as HTMLDetailsElement).open = true));
    await page.click('[data-do="clear"]');
    expect(new Set(await marks(page))).toEqual(new Set(['']));
    expect(await page.$$('.found')).toHaveLength(0);
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('names every mistake on its key, with what should stand there', async () => {
    const page = await open();
    const listed = await page.$$eval('.mistakes li', (all) => all.map((each) => each.textContent));
    expect(listed).toHaveLength(mistakes.size);
    for (const [i, key] of [...mistakes.keys()].entries()) expect(listed[i]!.replaceAll('−', '-'), key).toContain(right[key]!.split('e')[0]!);
    await page.browserContext().close();
  });
});
