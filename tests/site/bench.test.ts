import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plugsOut } from '../../generators/apparatus/box.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from '../practice/pages.ts';
import { type Built, builtSite, openPage } from './built.ts';
import { chooseIn, pressOn, tabTo, typeInto } from './by-keyboard.ts';

/** One experiment of each kind of bench: a wire, two boxes, four gaps, the galvanometer in a gap, clips, a bath. */
const KINDS = ['resistivity', 'end-corrections', 'carey-foster', 'kelvin', 'resistance-length', 'temperature-coefficient'];

let built: Built;
beforeAll(async () => {
  built = await builtSite(...KINDS, 'interchange', 'series-parallel');
}, 240_000);
afterAll(() => built.close());

type Watched = Page & { complaints: string[] };

const open = (id: string, width = 1000): Promise<Watched> => openPage(built, built.file(`experiments/${id}.html#${setCode(7)}`), { width });
const said = (page: Page) => page.$eval('[data-bench-said]', (text) => text.textContent!);
const inTable = (page: Page, key: string) => page.$eval(`[data-slot="read:${key}"]`, (cell) => cell.textContent);
const jockeyAt = (page: Page) => page.$eval('[data-jockey]', (jockey) => Number(jockey.getAttribute('aria-valuenow')));
const turned = (page: Page) => page.$eval('[data-needle]', (needle) => needle.getAttribute('transform'));

/** Takes plugs out of a box so that it stands at so many ohms, by Tab and space bar; the box is the first that Tab comes to. */
async function setBox(page: Page, plugs: readonly string[], ohms: string): Promise<void> {
  // Plugs of a box stand in a row: Tab goes from each to the next.
  await tabTo(page, `${plugs[0]} ohm plug out`);
  const out = plugsOut(plugs, ohms);
  for (let place = 0; place < plugs.length; place++) {
    if (out.includes(place)) await page.keyboard.press('Space');
    if (place < plugs.length - 1) await page.keyboard.press('Tab');
  }
}

/** With the focus on the jockey: holds it down by the space bar; what is said while it is down. */
async function touch(page: Page): Promise<string> {
  await page.keyboard.down('Space');
  const seen = await said(page);
  await page.keyboard.up('Space');
  return seen;
}

/** With the focus on the jockey: brings it to a place by steps of ten and of one. */
async function jockeyTo(page: Page, millimetres: number): Promise<void> {
  for (let at = await jockeyAt(page); at !== millimetres; at = await jockeyAt(page)) {
    const by = millimetres - at;
    await page.keyboard.press(Math.abs(by) >= 10 ? (by > 0 ? 'PageUp' : 'PageDown') : by > 0 ? 'ArrowRight' : 'ArrowLeft');
  }
}

/** With the focus on the jockey: looks for the place where the needle stands still. */
async function findNull(page: Page): Promise<number> {
  let [low, high] = [0, 1000];
  while (high - low > 1) {
    const middle = Math.round((low + high) / 2);
    await jockeyTo(page, middle);
    const seen = await touch(page);
    if (seen.includes('at zero')) return middle;
    if (seen.includes('left')) low = middle;
    else high = middle;
  }
  return jockeyAt(page);
}

describe('the bench in the page, by Tab, arrows, space bar and Enter alone', () => {
  it('gives a null point, which is written into the table and kept', { timeout: 120_000 }, async () => {
    const page = await open('resistivity');
    const { set } = setOf('resistivity', setCode(7));
    const R = [set.sheet.readings['R']!].flat()[0]!;
    await setBox(page, set.ask.bench.box.plugs, R);
    await pressOn(page, 'key', 'Space');
    expect(await said(page)).toContain('The key is closed.');
    await pressOn(page, 'protective resistance', 'Enter');
    expect(await said(page)).toContain('The protective resistance is out.');
    await pressOn(page, 'Jockey', 'Home');
    expect(await touch(page)).toContain('left stop');
    await page.keyboard.press('End');
    expect(await touch(page)).toContain('right stop');
    const place = await findNull(page);
    const l = [set.sheet.readings['l']!].flat()[0]!;
    expect(Math.abs(place / 10 - Number(l))).toBeLessThan(1.5);
    await typeInto(page, 'resistance box', R);
    await typeInto(page, 'null point', String(90 - place / 10));
    await pressOn(page, 'Write down', 'Enter');
    expect(await said(page)).toBe('This is not what the bench shows. Look again: null point.');
    await page.keyboard.press('Escape');
    await page.keyboard.down('Control');
    await page.keyboard.press('a');
    await page.keyboard.up('Control');
    await page.keyboard.type(String(place / 10));
    await pressOn(page, 'Write down', 'Enter');
    expect(await said(page)).toMatch(/^Row 1: resistance box [\d.]+ Ω, null point [\d.]+ cm\.$/);
    const written = (place / 10).toFixed(1);
    expect(await inTable(page, 'l:0')).toBe(written);
    await page.reload();
    expect(await inTable(page, 'l:0')).toBe(written);
    await pressOn(page, 'Back to the printed readings', 'Space');
    expect(await inTable(page, 'l:0')).toBe(l);
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('takes both null points of a row with the box in one gap and then in the other', { timeout: 120_000 }, async () => {
    const page = await open('interchange');
    const { set } = setOf('interchange', setCode(7));
    const R = [set.sheet.readings['R']!].flat()[0]!;
    await setBox(page, set.ask.bench.box.plugs, R);
    await pressOn(page, 'key', 'Space');
    await pressOn(page, 'protective resistance', 'Space');
    await tabTo(page, 'Jockey');
    const first = await findNull(page);
    await typeInto(page, 'resistance box', R);
    await typeInto(page, 'null point', String(first / 10));
    await pressOn(page, 'Write down', 'Enter');
    await chooseIn(page, 'Which is in which gap', 'resistance box on the right');
    expect(await page.$eval('[data-gap="right"] [data-name]', (name) => name.textContent)).toBe('resistance box');
    await tabTo(page, 'Jockey');
    const second = await findNull(page);
    await typeInto(page, 'resistance box', R);
    await typeInto(page, 'null point', String(second / 10));
    await pressOn(page, 'Write down', 'Enter');
    expect([await inTable(page, 'l:0'), await inTable(page, 'm:0')]).toEqual([(first / 10).toFixed(1), (second / 10).toFixed(1)]);
    expect(Math.abs(first + second - 1000)).toBeLessThan(15);
    await page.browserContext().close();
  });

  it('warms a bath, whose thermometer is read, and moves clips on a wire, whose length is read', { timeout: 120_000 }, async () => {
    const warm = await open('temperature-coefficient');
    const thread = () => warm.$eval('[data-thread]', (thread) => Number(thread.getAttribute('width')));
    const cold = await thread();
    await tabTo(warm, 'Warm or cool the bath');
    for (let i = 0; i < 20; i++) await warm.keyboard.press('ArrowRight');
    expect(await thread()).toBeCloseTo(cold + 20, 6);
    await typeInto(warm, 'resistance box', '0');
    await typeInto(warm, 'thermometer', '99');
    await pressOn(warm, 'Write down', 'Enter');
    expect(await said(warm)).toContain('Look again: thermometer');
    await warm.browserContext().close();

    const wire = await open('resistance-length');
    const end = () => wire.$eval('[data-rule-end="right"] [data-end]', (each) => each.getAttribute('transform'));
    const far = await end();
    await tabTo(wire, 'Move the right clip along the wire');
    await wire.keyboard.press('Home');
    expect(await end()).toBe('translate(114 0)');
    expect(far).not.toBe('translate(114 0)');
    await pressOn(wire, 'Say what I see', 'Enter');
    expect(await said(wire)).toContain('length between the clips: 10.0.');
    await wire.browserContext().close();
  });

  it('speaks its values on request', async () => {
    const page = await open('resistivity');
    await pressOn(page, 'Say what I see', 'Space');
    expect(await said(page)).toMatch(/^resistance box: 0\.0 ohms\. The jockey is at 50\.0 cm\. The key is open\. The protective resistance is in\. The jockey is lifted\. The needle stands at zero\.$/);
    expect(await page.$eval('[data-jockey]', (jockey) => jockey.getAttribute('aria-valuetext'))).toBe('50.0 cm');
    await page.browserContext().close();
  });

  it('moves by a millimetre, and by ten with Shift or Page', async () => {
    const page = await open('resistivity');
    await pressOn(page, 'Jockey', 'ArrowRight');
    await page.keyboard.down('Shift');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.up('Shift');
    await page.keyboard.press('PageUp');
    await page.keyboard.press('ArrowDown');
    expect(await jockeyAt(page)).toBe(520);
    await pressOn(page, '10 mm to the right', 'Space');
    await pressOn(page, '1 mm to the left', 'Enter');
    expect(await jockeyAt(page)).toBe(529);
    await page.browserContext().close();
  });
});

/** Where the middle of a part is on the screen. */
async function middleOf(page: Page, selector: string): Promise<{ x: number; y: number }> {
  await page.$eval(selector, (part) => part.scrollIntoView({ block: 'center' }));
  return page.$eval(selector, (part) => {
    const { x, y, width, height } = part.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  });
}

describe('the bench in the page, by mouse or finger', () => {
  it('lets the jockey be dragged along the wire, finely in the window, and held down by its knob', { timeout: 60_000 }, async () => {
    const page = await open('resistivity');
    const at = await middleOf(page, '[data-jockey]');
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x - 200, at.y, { steps: 5 });
    await page.mouse.up();
    const coarse = await jockeyAt(page);
    expect(coarse).toBeLessThan(300);
    const scale = await middleOf(page, '[data-tape]');
    await page.mouse.move(scale.x + 60, scale.y);
    await page.mouse.down();
    await page.mouse.move(scale.x + 80, scale.y);
    await page.mouse.up();
    const fine = await jockeyAt(page);
    expect(fine - coarse).toBeGreaterThanOrEqual(2);
    expect(fine - coarse).toBeLessThanOrEqual(4);

    await page.click('[data-switch="isClosed"]');
    expect(await turned(page)).toBe('rotate(0)');
    const knob = await middleOf(page, '[data-knob]');
    await page.mouse.move(knob.x, knob.y);
    await page.mouse.down();
    expect(await turned(page)).not.toBe('rotate(0)');
    await page.mouse.move(knob.x + 30, knob.y);
    expect(await said(page)).toContain('dragging the jockey');
    await page.mouse.up();
    expect(await turned(page)).toBe('rotate(0)');
    expect(await said(page)).toMatch(/^The jockey is lifted\. The needle stands at zero\. Just before, pressed at \d+\.\d cm: The needle stands (?:.* )?divisions to the (?:left|right)\.$/);
    await page.browserContext().close();
  });

  it('stays down under the finger that holds it while another finger moves it', async () => {
    const page = await open('resistivity');
    const finger = (selector: string, type: string, pointerId: number) =>
      page.$eval(selector, (part, name, id) => void part.dispatchEvent(new PointerEvent(name, { bubbles: true, pointerId: id })), type, pointerId);
    const isPressed = () => page.$eval('[data-bench]', (bench) => bench.classList.contains('pressed'));
    await finger('[data-press]', 'pointerdown', 5);
    await finger('[data-move="1"]', 'pointerdown', 6);
    await finger('[data-move="1"]', 'pointerup', 6);
    await page.$eval('[data-move="1"]', (button) => (button as HTMLElement).click());
    expect([await isPressed(), await jockeyAt(page)]).toEqual([true, 501]);
    expect(await said(page)).toContain('dragging the jockey');
    await finger('[data-press]', 'pointerup', 5);
    expect(await isPressed()).toBe(false);
    await page.browserContext().close();
  });

  it('moves the needle only while the jockey is pressed and the key closed', async () => {
    const page = await open('resistivity');
    await pressOn(page, 'Jockey', 'Home');
    await page.keyboard.down('Space');
    expect(await turned(page)).toBe('rotate(0)');
    expect(await said(page)).toContain('The key is open');
    await page.keyboard.press('ArrowRight');
    expect(await said(page)).toContain('dragging');
    await page.keyboard.up('Space');
    await page.browserContext().close();
  });

  it('warns when the key is left closed, and of a null point outside the window found with the protective resistance in', async () => {
    const page = await openPage(built, built.file('index.html'));
    // Twenty seconds pass when the test says so.
    await page.evaluateOnNewDocument(() => {
      const later = window.setTimeout.bind(window);
      const due: (() => void)[] = [];
      Object.assign(window, { pass: () => due.forEach((task) => task()) });
      window.setTimeout = ((task: () => void, time: number) => (time >= 20_000 ? due.push(task) : later(task, time))) as typeof window.setTimeout;
    });
    const pass = () => page.evaluate('pass()');
    await page.goto(built.file(`experiments/resistivity.html#${setCode(7)}`));
    await pressOn(page, 'key', 'Space');
    expect(await said(page)).not.toContain('warms the wires');
    await pass();
    expect(await said(page)).toContain('warms the wires');
    await pressOn(page, 'Jockey', 'End');
    await typeInto(page, 'resistance box', '0');
    await typeInto(page, 'null point', '100');
    await pressOn(page, 'Write down', 'Enter');
    expect(await said(page)).toContain('outside 40 cm to 60 cm');
    expect(await said(page)).toContain('protective resistance is still in');
    // Another set comes with its key open, and with nothing said of the one before.
    await page.click('[data-do="fresh"]');
    await page.waitForFunction(() => document.querySelector('[data-bench-said]')!.textContent === '');
    await pass();
    expect(await said(page)).toBe('');
    await page.browserContext().close();
  });

  it('says when no table asks for what is in the gaps, and what is wrong with a circuit', async () => {
    const page = await open('series-parallel');
    await page.select('[data-first-in]', 'right');
    expect(await page.$eval('[data-no-table]', (text) => (text as HTMLElement).hidden)).toBe(false);
    await page.select('[data-pair]', '3');
    await page.select('[data-first-in]', 'left');
    expect(await page.$eval('[data-no-table]', (text) => (text as HTMLElement).hidden)).toBe(true);
    expect(await page.$eval('[data-gap="right"] [data-name]', (name) => name.textContent)).toBe('wires in parallel');
    await page.click('[data-faulty]');
    await page.click('[data-do="bench-reveal"]');
    expect(await said(page)).toMatch(/gap|joint|cell|galvanometer/);
    await page.browserContext().close();
  });
});

describe('the look of the bench', () => {
  it.each([390, 1920])('fits a screen %d wide with every kind of bench, and cuts no number of the scale', { timeout: 120_000 }, async (width) => {
    for (const id of KINDS) {
      const page = await open(id, width);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), id).toBeLessThanOrEqual(0);
      await page.$eval('[data-jockey]', (jockey) => (jockey as SVGElement).focus());
      for (const key of ['Home', 'PageUp', 'PageUp', 'PageUp', 'PageUp', 'PageUp', 'End'] as const) {
        await page.keyboard.press(key);
        expect(await cutNumbers(page), `${id} after ${key}`).toEqual([]);
      }
      await page.browserContext().close();
    }
  });

  it('lets nothing move where the device asks for less motion', async () => {
    const page = await open('resistivity');
    await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'reduce' }]);
    expect(await page.$eval('[data-needle]', (needle) => getComputedStyle(needle).transitionDuration)).toBe('0s');
    await page.browserContext().close();
  });
});

/** Numbers of the magnified scale that an edge of the window runs through. */
function cutNumbers(page: Page): Promise<string[]> {
  return page.$eval('[data-tape]', (tape) => {
    const { left, right } = tape.getBoundingClientRect();
    return Array.from(tape.querySelectorAll('text')).filter((text) => {
      const own = text.getBoundingClientRect();
      return (own.left < left && own.right > left) || (own.left < right && own.right > right);
    }).map((text) => text.textContent!);
  });
}
