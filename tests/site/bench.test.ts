import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plugsOut } from '../../generators/apparatus/box.ts';
import { gaugeBench, thimbleAt } from '../../generators/practice/screw-gauge.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from '../practice/pages.ts';
import { type Built, builtSite, openPage } from './built.ts';

let built: Built;
beforeAll(async () => {
  built = await builtSite('resistivity');
}, 180_000);
afterAll(() => built.close());

const said = (page: Page) => page.$eval('[data-bench-said]', (text) => text.textContent!);

/** Goes to a control as Tab would and works it by a key alone. */
async function byKey(page: Page, selector: string, key: 'Space' | 'ArrowLeft' | 'ArrowRight' | 'Home' | 'End'): Promise<void> {
  await page.focus(selector);
  await page.keyboard.press(key);
}

/** Presses the jockey for a moment by the space bar; what is said while it is pressed. */
async function touch(page: Page): Promise<string> {
  await page.focus('[data-press]');
  await page.keyboard.down('Space');
  const seen = await said(page);
  await page.keyboard.up('Space');
  return seen;
}

async function jockeyTo(page: Page, millimetres: number): Promise<void> {
  await page.$eval('[data-jockey]', (jockey, value) => {
    (jockey as HTMLInputElement).value = String(value);
    jockey.dispatchEvent(new Event('input', { bubbles: true }));
  }, millimetres);
}

async function bench(): Promise<Page> {
  const page = await openPage(built, built.file(`experiments/resistivity.html#${setCode(7)}`));
  const { set } = setOf('resistivity', setCode(7));
  const plugs = set.ask.bench.box.plugs;
  for (const place of plugsOut(plugs, [set.sheet.readings['R']!].flat()[0]!)) await byKey(page, `.plug:nth-child(${place + 1})`, 'Space');
  return page;
}

describe('the screw gauge in the page', () => {
  const saidOf = (page: Page) => page.$eval('[data-gauge-said]', (text) => text.textContent!);

  it('is turned until its ratchet slips, read, and written down, by keyboard alone', { timeout: 60_000 }, async () => {
    const page = await bench();
    const { set, steps } = setOf('resistivity', setCode(7));
    const { gauge, touching } = gaugeBench(steps, set)!;
    const drawn = () => page.$eval('[data-gauge-drawn]', (div) => div.innerHTML);
    const open = await drawn();
    await page.select('[data-gauge-at]', '2');
    await byKey(page, '[data-do="gauge-enter"]', 'Space');
    expect(await saidOf(page)).toContain('do not touch the wire yet');
    await byKey(page, '[data-turn="-10"]', 'Space');
    await byKey(page, '[data-do="gauge-close"]', 'Space');
    expect(await saidOf(page)).toContain('ratchet slips');
    expect(await drawn()).not.toBe(open);
    const { turns, division } = thimbleAt(gauge, touching[2]!);
    await page.type('[data-gauge-main]', String((turns + 1) * Number(gauge.pitch)));
    await page.type('[data-gauge-circular]', String(division));
    await byKey(page, '[data-do="gauge-enter"]', 'Space');
    expect(await saidOf(page)).toContain('not what the gauge shows');
    await page.$eval('[data-gauge-main]', (input) => ((input as HTMLInputElement).value = ''));
    await page.type('[data-gauge-main]', String(turns * Number(gauge.pitch)));
    await byKey(page, '[data-do="gauge-enter"]', 'Space');
    expect(await page.$eval('[data-slot="read:n:2"]', (cell) => cell.textContent)).toBe(String(division));
    expect((page as Page & { complaints: string[] }).complaints).toEqual([]);
    await page.browserContext().close();
  });
});

describe('the bench in the page', () => {
  it('gives a null point by keyboard alone, which goes into the table and is kept', { timeout: 120_000 }, async () => {
    const page = await bench();
    await byKey(page, '[data-toggle="isClosed"]', 'Space');
    await byKey(page, '[data-jockey]', 'Home');
    expect(await touch(page)).toContain('left');
    await byKey(page, '[data-jockey]', 'End');
    expect(await touch(page)).toContain('right');
    let [low, high] = [0, 1000];
    await byKey(page, '[data-toggle="isProtected"]', 'Space');
    while (high - low > 1) {
      const middle = Math.round((low + high) / 2);
      await jockeyTo(page, middle);
      const seen = await touch(page);
      if (seen.includes('at zero')) break;
      if (seen.includes('left')) low = middle;
      else high = middle;
    }
    await byKey(page, '[data-move="1"]', 'Space');
    await byKey(page, '[data-do="bench-enter"]', 'Space');
    expect(await said(page)).toMatch(/^Row 1: R = [\d.]+ Ω, l = [\d.]+ cm\.$/);
    const taken = (await said(page)).match(/l = ([\d.]+)/)![1];
    const inTable = () => page.$eval('[data-slot="read:l:0"]', (cell) => cell.textContent);
    expect(await inTable()).toBe(taken);
    const { set } = setOf('resistivity', setCode(7));
    expect(Math.abs(Number(taken) - Number([set.sheet.readings['l']!].flat()[0]))).toBeLessThan(1.5);
    await page.reload();
    expect(await inTable()).toBe(taken);
    await byKey(page, '[data-do="bench-printed"]', 'Space');
    expect(await inTable()).toBe([set.sheet.readings['l']!].flat()[0]);
    expect((page as Page & { complaints: string[] }).complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('moves the needle only while the jockey is pressed and the key closed', async () => {
    const page = await bench();
    const turned = () => page.$eval('.needle', (needle) => needle.getAttribute('transform'));
    expect(await turned()).toBe('rotate(0)');
    await page.focus('[data-press]');
    await page.keyboard.down('Space');
    expect(await turned()).toBe('rotate(0)');
    expect(await said(page)).toContain('The key is open');
    await page.keyboard.up('Space');
    await jockeyTo(page, 100);
    await byKey(page, '[data-toggle="isClosed"]', 'Space');
    expect(await turned()).toBe('rotate(0)');
    await page.focus('[data-press]');
    await page.keyboard.down('Space');
    expect(await turned()).not.toBe('rotate(0)');
    await page.keyboard.up('Space');
    expect(await turned()).toBe('rotate(0)');
    await page.browserContext().close();
  });

  it('comments on dragging, on a protective resistance left in and on a null outside the window', async () => {
    const page = await bench();
    await byKey(page, '[data-toggle="isPressed"]', 'Space');
    await byKey(page, '[data-move="10"]', 'Space');
    expect(await said(page)).toContain('dragging');
    await jockeyTo(page, 900);
    await byKey(page, '[data-do="bench-enter"]', 'Space');
    expect(await said(page)).toContain('outside 40 cm to 60 cm');
    expect(await said(page)).toContain('protective resistance is still in');
    await page.browserContext().close();
  });

  it('speaks its values on request', async () => {
    const page = await bench();
    await byKey(page, '[data-do="bench-tell"]', 'Space');
    expect(await said(page)).toMatch(/^R is [\d.]+ ohms, the jockey at 50\.0 cm\. The key is open\. The protective resistance is in\. The jockey is lifted/);
    expect(await page.$eval('[data-jockey]', (jockey) => jockey.getAttribute('aria-valuetext'))).toBe('50.0 cm');
    await page.browserContext().close();
  });
});
