import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plugsOut } from '../../generators/apparatus/box.ts';
import { deadBand } from '../../generators/apparatus/null.ts';
import { loadTables } from '../../generators/cli/content.ts';
import { bridgeAlone, celsiusAlone, gaugeAlone, lengthAlone, ohmsToSet, tried } from '../../generators/practice/alone.ts';
import { gaugeBench, thimbleAt } from '../../generators/practice/screw-gauge.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from '../practice/pages.ts';
import { axeFinds } from '../axe.ts';
import { type Built, builtSite, openPage } from './built.ts';
import { chooseIn, pressOn, tabTo, typeInto } from './by-keyboard.ts';

const { bench: sizes } = loadTables();

let built: Built;
beforeAll(async () => {
  built = await builtSite('resistivity');
}, 240_000);
afterAll(() => built.close());

type Watched = Page & { complaints: string[] };

const open = (manner = {}): Promise<Watched> => openPage(built, built.file('instruments.html'), manner);
const said = (page: Page, instrument: string) => page.$eval(`[data-instrument="${instrument}"] [data-instrument-said]`, (text) => text.textContent!);

/** Everything between two instruments is gone through by Tab: the next "Check" belongs to the field that was just left. */
async function check(page: Page): Promise<void> {
  await pressOn(page, 'Check', 'Enter');
}

describe('the page of the instruments, by Tab, arrows, space bar and Enter alone', () => {
  it('lets a null point be found, and tells whether it was', { timeout: 60_000 }, async () => {
    const page = await open();
    const { laid } = bridgeAlone(sizes, tried(1));
    const [{ first, second }] = laid.pairs as unknown as [Record<'first' | 'second', { ohms(): number }>];
    const [low, high] = deadBand(laid.bridge, { left: first.ohms(), right: second.ohms() });
    await pressOn(page, 'key', 'Space');
    await pressOn(page, 'protective resistance', 'Space');
    await tabTo(page, 'Jockey');
    const at = () => page.$eval('[data-jockey]', (jockey) => Number(jockey.getAttribute('aria-valuenow')));
    const aim = Math.round(5 * (low + high));
    for (let now = await at(); now !== aim; now = await at()) await page.keyboard.press(Math.abs(aim - now) >= 10 ? (aim > now ? 'PageUp' : 'PageDown') : aim > now ? 'ArrowRight' : 'ArrowLeft');
    await page.keyboard.down('Space');
    expect(await said(page, 'bridge')).toMatch(/at zero|0\.5 divisions|1 divisions/);
    await page.keyboard.up('Space');
    await typeInto(page, 'Null point in cm', String(100 - aim / 10));
    await check(page);
    expect(await said(page, 'bridge')).toContain('still flows');
    await page.keyboard.down('Shift');
    await page.keyboard.press('Tab');
    await page.keyboard.up('Shift');
    await page.keyboard.press('End');
    for (let i = 0; i < 6; i++) await page.keyboard.press('Backspace');
    await page.keyboard.type(String(aim / 10));
    await check(page);
    expect(await said(page, 'bridge')).toContain('Right');
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('lets a box be set', async () => {
    const page = await open();
    const { plugs } = sizes.box;
    const out = plugsOut(plugs, ohmsToSet(plugs, tried(1)));
    await tabTo(page, `${plugs[0]} ohm plug out`);
    for (let place = 0; place < plugs.length; place++) {
      if (out.includes(place)) await page.keyboard.press('Space');
      if (place < plugs.length - 1) await page.keyboard.press('Tab');
    }
    await check(page);
    expect(await said(page, 'box')).toContain('Right');
    await pressOn(page, 'Another one', 'Enter');
    expect(await page.$eval('[data-task]', (task) => task.textContent)).toBe(`Set ${ohmsToSet(plugs, tried(2))} Ω.`);
    await page.browserContext().close();
  });

  it('lets a screw gauge be turned and read', async () => {
    const page = await open();
    const { gauge, touching } = gaugeAlone(sizes, tried(1));
    await pressOn(page, 'Thimble of the screw gauge', 'PageDown');
    await page.keyboard.press('ArrowUp');
    const stands = () => page.$eval('[data-gauge-drawn]', (drawn) => Number(drawn.getAttribute('aria-valuenow')));
    expect(await stands()).toBe(touching + 51);
    await page.keyboard.press('Home');
    expect(await stands()).toBe(touching);
    expect(await said(page, 'gauge')).toContain('ratchet slips');
    const { turns, division } = thimbleAt(gauge, touching);
    await typeInto(page, 'Main scale in mm', String(turns * Number(gauge.pitch)));
    await typeInto(page, 'Circular scale', String(division));
    await check(page);
    expect(await said(page, 'gauge')).toContain(`Right: ${(touching / 100).toFixed(2)} mm`);
    await page.browserContext().close();
  });

  it('lets a rule and a thermometer be read', async () => {
    const page = await open();
    await typeInto(page, 'Length cm', '1.4');
    await check(page);
    expect(await said(page, 'rule')).toContain('Read both ends');
    await typeInto(page, 'Temperature in °C', String(Math.round(celsiusAlone(tried(1)))));
    await check(page);
    expect(await said(page, 'thermometer')).toContain('Right');
    await page.browserContext().close();
    const other = await open();
    await typeInto(other, 'Length cm', String(lengthAlone(tried(1))));
    await check(other);
    expect(await said(other, 'rule')).toContain('Right');
    await other.browserContext().close();
  });
});

describe('the page of the instruments', () => {
  it('shows every instrument and tells how it is read without a script', async () => {
    const page = await open({ script: false });
    expect(await page.$$('[data-instrument] svg')).not.toHaveLength(0);
    for (const instrument of ['bridge', 'box', 'gauge', 'rule', 'thermometer']) expect((await page.$$(`[data-instrument="${instrument}"] svg`)).length, instrument).toBeGreaterThan(0);
    expect(await page.$eval('[data-do="check"]', (button) => getComputedStyle(button.parentElement!).display)).toBe('none');
    await page.browserContext().close();
  });

  it.each(['light', 'dark'])('has nothing that axe finds in the %s, and fits a phone', { timeout: 60_000 }, async (look) => {
    const page = await open({ width: 390 });
    await page.evaluate((chosen) => void (document.documentElement.dataset['look'] = chosen), look);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await axeFinds(page)).toEqual([]);
    await page.browserContext().close();
  });
});

describe('the screw gauge and the rule of a set, by keyboard alone', () => {
  it('are read, and what is written down stands in the record', { timeout: 60_000 }, async () => {
    const page = await openPage(built, built.file(`experiments/resistivity.html#${setCode(7)}`));
    const { set, steps } = setOf('resistivity', setCode(7));
    const { gauge, touching } = gaugeBench(steps, set)!;
    const saidOf = (part: string) => page.$eval(`[data-${part}-said]`, (text) => text.textContent!);
    await typeInto(page, 'Length', (set.truth['L']! + 2).toFixed(1));
    await pressOn(page, 'Write down', 'Enter');
    expect(await saidOf('rule')).toContain('Read both ends');
    await page.keyboard.down('Shift');
    await page.keyboard.press('Tab');
    await page.keyboard.up('Shift');
    await page.keyboard.press('End');
    for (let i = 0; i < 6; i++) await page.keyboard.press('Backspace');
    await page.keyboard.type(set.truth['L']!.toFixed(1));
    await pressOn(page, 'Write down', 'Enter');
    expect(await page.$eval('[data-slot="read:L:0"]', (value) => value.textContent)).toContain(set.truth['L']!.toFixed(1));

    await chooseIn(page, 'Between the jaws:', 'the wire at place 2 a');
    await pressOn(page, 'Enter the reading', 'Space');
    expect(await saidOf('gauge')).toContain('do not touch the wire yet');
    await pressOn(page, 'Thimble of the screw gauge', 'Home');
    const { turns, division } = thimbleAt(gauge, touching[2]!);
    await typeInto(page, 'Main scale in mm', String((turns + 1) * Number(gauge.pitch)));
    await typeInto(page, 'Circular scale', String(division));
    await pressOn(page, 'Enter the reading', 'Enter');
    expect(await saidOf('gauge')).toContain('not what the gauge shows');
    await typeInto(page, 'Main scale in mm', String(turns * Number(gauge.pitch)));
    await pressOn(page, 'Enter the reading', 'Enter');
    expect(await page.$eval('[data-slot="read:n:2"]', (cell) => cell.textContent)).toBe(String(division));
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });
});
