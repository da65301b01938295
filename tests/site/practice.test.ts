import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { setCode } from '../../generators/practice/set-code.ts';
import { round } from '../../generators/quantities/written.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { setOf } from '../practice/pages.ts';
import { type Built, builtSite, openPage } from './built.ts';

const CODE = setCode(48213);

let built: Built;
beforeAll(async () => {
  built = await builtSite('resistivity', 'gauge-drill');
}, 180_000);
afterAll(() => built.close());

/** Writes a value into a place as a student does, and leaves it. */
async function write(page: Page, key: string, text: string): Promise<void> {
  const [, mantissa = text, power] = /^(.*)e(-?\d+)$/.exec(text) ?? [];
  const inputs = await page.$$(`[data-place="${key}"] input`);
  const [first, second] = inputs;
  await first!.evaluate((input) => (input as HTMLInputElement).select());
  await first!.type(power !== undefined && !second ? text : mantissa);
  await second?.evaluate((input) => ((input as HTMLInputElement).value = ''));
  if (second && power !== undefined) await second.type(power);
  await page.keyboard.press('Tab');
}

const openTools = (page: Page) => page.$eval('details.tools', (tools) => void ((tools as HTMLDetailsElement).open = true));
const marks = (page: Page) => page.$$eval('[data-place] .mark', (all) => all.map((mark) => mark.textContent));
const said = (page: Page, key: string) => page.$eval(`[data-place="${key}"]`, (place) => place.closest('.block')!.querySelector('[data-said]')!.textContent);
const told = (page: Page) => page.$eval('[data-told]', (each) => each.textContent);
const readings = (page: Page) => page.$$eval('[data-slot^="read:"]', (all) => all.map((slot) => slot.textContent).join(' '));

describe.each(['file', 'http'] as const)('a practice page from %s', (from) => {
  it('takes a whole right run, keeps it over a reload, and clears it', { timeout: 120_000 }, async () => {
    const page = await openPage(built, built[from](`experiments/resistivity.html#${CODE}`));
    const { places, right } = setOf('resistivity', CODE);
    for (const { key } of places) await write(page, key, right[key]!);
    expect(new Set(await marks(page))).toEqual(new Set(['right']));
    expect(await page.$eval('[data-progress]', (progress) => progress.textContent)).toContain(`All ${places.length} places are right`);
    await page.reload();
    expect(new Set(await marks(page))).toEqual(new Set(['right']));
    await openTools(page);
    await page.click('[data-do="clear"]');
    expect(new Set(await marks(page))).toEqual(new Set(['']));
    await page.reload();
    expect(new Set(await marks(page))).toEqual(new Set(['']));
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('shows the same set for the same code, another for another, and its code', async () => {
    const page = await openPage(built, built[from](`experiments/resistivity.html#${CODE}`));
    const first = await readings(page);
    await page.click('[data-do="fresh"]');
    await page.waitForFunction((before) => location.hash !== before, {}, `#${CODE}`);
    expect(await readings(page)).not.toBe(first);
    await openTools(page);
    await page.type('#set-code', '048 213');
    await page.click('[data-do="open-code"]');
    await page.waitForFunction((code) => location.hash === code, {}, `#${CODE}`);
    expect(await readings(page)).toBe(first);
    expect(await page.$eval('[data-slot="code"]', (code) => code.textContent)).toBe(CODE);
    await page.browserContext().close();
  });
});

describe('a practice page', () => {
  it('gives a deeper hint for each further wrong value that no slip explains, and opens the working only after an entry', async () => {
    const page = await openPage(built, built.file(`experiments/resistivity.html#${CODE}`));
    const lines = () => page.$$eval('[data-said] .lines p', (all) => all.length);
    await page.focus('[data-place="X:0"] input');
    expect(await page.$$('[data-said] button')).toHaveLength(0);
    await write(page, 'X:0', '77.77');
    await page.focus('[data-place="X:0"] input');
    expect(await lines()).toBe(1);
    await write(page, 'X:0', '55.55');
    await page.focus('[data-place="X:0"] input');
    expect(await lines()).toBe(2);
    await page.click('[data-said] button');
    expect(await lines()).toBe(3);
    expect(await said(page, 'X:0')).toContain('The working is all open');
    await page.browserContext().close();
  });

  it('takes later values on the figures before them', async () => {
    const page = await openPage(built, built.file(`experiments/resistivity.html#${CODE}`));
    const { right } = setOf('resistivity', CODE);
    await write(page, 'meanD:0', '0.500');
    await write(page, 'e:0', right['e:0']!);
    await write(page, 'd:0', round(0.5 - Number(right['e:0']), { decimals: 3 }, 'even'));
    expect(await page.$eval('[data-place="meanD:0"] .mark', (mark) => mark.textContent)).toBe('look again');
    expect(await page.$eval('[data-place="d:0"] .mark', (mark) => mark.textContent)).toBe('right');
    await page.browserContext().close();
  });

  it('takes the mantissa and the power of ten in two fields, its minus from a button', async () => {
    const page = await openPage(built, built.file(`experiments/resistivity.html#${CODE}`));
    const { right } = setOf('resistivity', CODE);
    const [mantissa, power] = right['rho:0']!.split('e-') as [string, string];
    const [first, second] = await page.$$('[data-place="rho:0"] input');
    await first!.type(mantissa);
    await second!.type(power);
    await page.click('[data-place="rho:0"] .raised .sign');
    expect(await page.$eval('[data-place="rho:0"] .mark', (mark) => mark.textContent)).toBe('right');
    await page.browserContext().close();
  });

  it('asks for the choice that follows from the figures, and keeps it', async () => {
    const page = await openPage(built, built.file(`experiments/resistivity.html#${CODE}`));
    const { set, steps } = setOf('resistivity', CODE);
    const [right] = workOut(set.sheet, steps).verdicts()['agreement']!;
    const mark = () => page.$eval('[data-verdict="agreement:0"] .mark', (each) => each.textContent);
    expect(await mark()).toBe('');
    await page.click(`[data-verdict] input[value="${right === 'agrees' ? 'differs' : 'agrees'}"]`);
    expect(await mark()).toBe('look again');
    await page.click(`[data-verdict] input[value="${right}"]`);
    expect(await mark()).toBe('right');
    await page.reload();
    expect(await mark()).toBe('right');
    await page.browserContext().close();
  });

  it('shows one row of a table at a time on a narrow screen', async () => {
    const page = await openPage(built, built.file('experiments/resistivity.html'), { width: 390 });
    const visible = () => page.$$eval('table.record:first-of-type tbody tr', (rows) => rows.map((row) => (row as HTMLElement).offsetHeight > 0));
    expect((await visible()).slice(0, 4)).toEqual([true, false, false, false]);
    await page.click('[data-do="row-next"]');
    expect((await visible()).slice(0, 4)).toEqual([false, true, false, false]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.browserContext().close();
  });

  it('takes readings off drawings within their latitude', { timeout: 120_000 }, async () => {
    const page = await openPage(built, built.file(`experiments/gauge-drill.html#${CODE}`));
    const { places, right } = setOf('gauge-drill', CODE);
    expect(places.some(({ kind }) => kind === 'drawn')).toBe(true);
    for (const { key } of places) await write(page, key, right[key]!);
    expect(new Set(await marks(page))).toEqual(new Set(['right']));
    await page.browserContext().close();
  });

  it('shows a set, its key and what needs scripts where there are none', async () => {
    const page = await openPage(built, built.file('experiments/resistivity.html'), { script: false });
    expect(await page.$eval('.without-script', (note) => (note as HTMLElement).innerText)).toContain('Without scripts');
    const { set, right } = setOf('resistivity', setCode(1));
    const shown = await page.$eval('main', (main) => main.textContent);
    for (const l of set.sheet.readings['l']!) expect(shown).toContain(l);
    await page.click('details.key summary');
    expect(await page.$eval('[data-slot="key:meanX:0"]', (slot) => (slot as HTMLElement).innerText)).toContain(right['meanX:0']);
    expect(await page.$$eval('button, input, select', (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).length)).toBe(0);
    await page.browserContext().close();
  });

  it.each(['K7QM-2D9P', 'k7qm2d9p', 'K7QM 2D9P', 'KOQM–2D9P'])('says so where someone gives the sheet code %s', async (code) => {
    const page = await openPage(built, built.file('experiments/resistivity.html'));
    const before = await readings(page);
    await openTools(page);
    await page.type('#set-code', code);
    await page.click('[data-do="open-code"]');
    expect(await told(page)).toContain('Only your teacher has its key');
    expect(await readings(page)).toBe(before);
    await page.browserContext().close();
  });

  it('opens a typed set code by Enter, and says of another text that it is none, in the address too', async () => {
    const page = await openPage(built, built.file('experiments/resistivity.html'));
    await openTools(page);
    for (const [text, answer] of [['set-04821', 'This is no set code'], ['set04821', 'This is no set code'], ['48213', 'This is no set code'], ['48 213', 'This is no set code'], ['048213', '']] as const) {
      await page.$eval('#set-code', (input) => ((input as HTMLInputElement).value = ''));
      await page.type('#set-code', text);
      await page.keyboard.press('Enter');
      if (answer !== '') expect(await told(page), text).toContain(answer);
    }
    expect(await page.evaluate(() => location.hash)).toBe(`#${CODE}`);
    await page.browserContext().close();
    for (const [hash, answer] of [['#set-48', 'This is no set code'], ['#K7QM-2D9P', 'This is the code of a sheet'], ['#%E0', 'This is no set code'], ['#part-key', ''], ['#set%20048213', '']] as const) {
      const astray = await openPage(built, built.file('experiments/resistivity.html'));
      await astray.goto(`${built.file('experiments/resistivity.html')}?${hash}`);
      expect((await told(astray)).split('.')[0], hash).toBe(answer);
      expect(astray.complaints).toEqual([]);
      await astray.browserContext().close();
    }
  });

  it('keeps what was written in two windows of one set', async () => {
    const one = await openPage(built, built.http(`experiments/resistivity.html#${CODE}`));
    const other = await one.browserContext().newPage();
    await other.goto(one.url());
    await write(other, 'r:1', '2.22');
    await one.bringToFront();
    await write(one, 'r:0', '1.11');
    await one.reload();
    expect(await one.$$eval('[data-place="r:0"] input, [data-place="r:1"] input', (all) => all.map((input) => (input as HTMLInputElement).value))).toEqual(['1.11', '2.22']);
    await one.browserContext().close();
  });

  it.each(['experiments/resistivity.html', 'my-readings/resistivity.html'])('prints %s black on white without its controls, in the dark too, with what was written', async (name) => {
    const page = await openPage(built, built.file(name));
    await page.type('[data-reading="R:0"], [data-place="r:0"] input', '41.5');
    await page.evaluate(() => {
      document.documentElement.dataset['look'] = 'dark';
      dispatchEvent(new Event('beforeprint'));
    });
    await page.emulateMediaType('print');
    // A minus that is pressed is a minus on paper.
    await page.$$eval('[data-place="rho:0"] .raised .sign', ([sign]) => (sign as HTMLElement | undefined)?.click());
    expect(await page.$$eval('.sign', (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).map((each) => each.getAttribute('aria-pressed')))).toEqual(name.startsWith('my') ? [] : ['true']);
    expect(await page.$$eval('button:not(.sign), nav, header, footer, select[data-place]', (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).length)).toBe(0);
    expect(await page.$eval('html', (root) => [getComputedStyle(root).color, getComputedStyle(root).backgroundColor])).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    expect(await page.$eval('[data-reading="R:0"], [data-place="r:0"] input', (input) => [(input as HTMLInputElement).value, (input as HTMLElement).offsetParent !== null])).toEqual(['41.5', true]);
    await page.browserContext().close();
  });

  it('prints its key on a page of its own, upside down', async () => {
    const page = await openPage(built, built.file('experiments/resistivity.html'));
    await page.emulateMediaType('print');
    await page.evaluate(() => void dispatchEvent(new Event('beforeprint')));
    const key = await page.$eval('.key-page', (each) => [getComputedStyle(each).breakBefore, getComputedStyle(each).transform, (each as HTMLElement).offsetHeight > 0]);
    expect(key).toEqual(['page', 'matrix(-1, 0, 0, -1, 0, 0)', true]);
    await page.browserContext().close();
  });

  it('goes to its parts by links and past its links without leaving the set', async () => {
    const page = await openPage(built, built.file(`experiments/resistivity.html#${CODE}`));
    for (const [link, to] of [['.parts a[href="#part-observations"]', 'part-observations'], ['.skip', 'text']] as const) {
      await page.$eval(link, (each) => (each as HTMLElement).click());
      expect(await page.evaluate(() => [location.hash, document.activeElement!.id])).toEqual([`#${CODE}`, to]);
    }
    expect(await page.$eval('[data-slot="code"]', (code) => code.textContent)).toBe(CODE);
    await page.browserContext().close();
  });

  it('shows readings and places alone in the plain view', async () => {
    const page = await openPage(built, built.file('experiments/resistivity.html'));
    await openTools(page);
    await page.click('[data-do="plain"]');
    const seen = (selector: string) => page.$$eval(selector, (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).length);
    expect(await seen('header, .before, .after, .after-key')).toBe(0);
    expect(await seen('table.record')).toBeGreaterThan(0);
    await page.click('[data-do="plain"]');
    expect(await seen('header')).toBe(1);
    await page.browserContext().close();
  });
});
