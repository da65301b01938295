import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exactly } from '../../generators/marking/reach.ts';
import { slipped, slipsOf } from '../../generators/marking/slipped.ts';
import { figuresBefore } from '../../generators/practice/check.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { round } from '../../generators/quantities/written.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { marking, practised, setOf } from '../practice/pages.ts';
import { type Built, builtSite, openPage } from './built.ts';

const CODE = setCode(777);

let built: Built;
beforeAll(async () => {
  built = await builtSite(...practised);
}, 180_000);
afterAll(() => built.close());

const open = (id: string) => openPage(built, built.file(`experiments/${id}.html#${CODE}`));
const marks = (page: Page) => page.$$eval('[data-place] .mark', (all) => all.map((mark) => mark.textContent));
const readings = (page: Page) => page.$$eval('[data-slot^="read:"]', (slots) => Object.fromEntries(slots.map((slot) => [(slot as HTMLElement).dataset['slot'], slot.textContent ?? ''])) as Record<string, string>);

/** Types a value into a place, its power of ten apart where there are two fields, and goes on to the next. */
async function type(page: Page, key: string, text: string): Promise<void> {
  const [, mantissa = text, power] = /^(.*)e(-?\d+)$/.exec(text) ?? [];
  const [first, second] = await page.$$(`[data-place="${key}"] input`);
  await first!.focus();
  await page.keyboard.type(power !== undefined && !second ? text : mantissa);
  if (second && power !== undefined) {
    await second.focus();
    await page.keyboard.type(power);
  }
  await page.keyboard.press('Tab');
}

/** Puts a value into a place at one stroke; the mark beside it and what is said of it. */
const put = (page: Page, key: string, text: string): Promise<{ mark: string; said: string }> =>
  page.$eval(
    `[data-place="${key}"]`,
    (place, value) => {
      const [, mantissa = value, power = ''] = /^(.*)e(-?\d+)$/.exec(value) ?? [];
      const inputs = Array.from(place.querySelectorAll('input'));
      // A minus that is typed does, as well as one that is pressed; what was pressed for an earlier value is let go.
      place.querySelectorAll<HTMLElement>('.sign[aria-pressed="true"]').forEach((sign) => sign.click());
      inputs[0]!.value = inputs.length === 1 ? value : mantissa;
      if (inputs[1]) inputs[1].value = power;
      inputs[0]!.dispatchEvent(new Event('change', { bubbles: true }));
      return { mark: place.querySelector('.mark')!.textContent!, said: place.closest('.block')!.querySelector('[data-said]')!.textContent! };
    },
    text,
  );

describe.each(practised)('a student at %s', (id) => {
  const { set, steps, places, right } = setOf(id, CODE);

  it('finds the set that Node makes, works it all right by keyboard, chooses what follows, and finds it again', async () => {
    const page = await open(id);
    for (const [slot, text] of Object.entries(await readings(page))) {
      const [, step, row] = slot.split(':');
      expect(text.replaceAll('−', '-').replace(' × 10', '×10'), slot).toContain([set.sheet.readings[step!]!].flat()[Number(row)]!.split('e')[0]);
    }
    const before = await readings(page);
    const fields = await page.$$eval('[data-place]', (holders) => holders.map((holder) => (holder as HTMLElement).dataset['place']!));
    expect(fields.sort()).toEqual(places.map(({ key }) => key).sort());
    for (const { key } of places) await type(page, key, right[key]!);
    const follows = workOut(set.sheet, steps).verdicts();
    for (const key of await page.$$eval('[data-verdict]', (all) => all.map((each) => (each as HTMLElement).dataset['verdict']!))) {
      const [verdict, row] = key.split(':') as [string, string];
      const value = follows[verdict]![Number(row)]!;
      if (await page.$(`[data-verdict="${key}"] select`)) await page.select(`[data-verdict="${key}"] select`, value);
      else await page.click(`[data-verdict="${key}"] input[value="${value}"]`);
    }
    const all = () => page.$$eval('[data-place] .mark, [data-verdict] .mark', (each) => [...new Set(each.map((mark) => mark.textContent))]);
    expect(await all()).toEqual(['right']);
    await page.reload();
    expect(await all()).toEqual(['right']);
    expect(await readings(page)).toEqual(before);
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });

  it('is told each slip where it is made and shows', async () => {
    const page = await open(id);
    const missed: string[] = [];
    let told = 0;
    for (const step of new Set(places.map((place) => place.id))) {
      const rows = places.filter((place) => place.id === step);
      for (const slip of slipsOf(steps.step(step))) {
        for (const place of rows) {
          const value = exactly({ sheet: set.sheet, program: slipped(steps, [{ at: step, slip }]), own: figuresBefore(places, {}, '') }, step).get(step)![place.row]!;
          if (!Number.isFinite(value)) continue;
          const { mark, said } = await put(page, place.key, round(value, { figures: 4 }, 'even'));
          // In some rows honest work can give the same value.
          if (mark !== 'look again') continue;
          if (said.includes(marking.slips[slip.id]!.says)) told++;
          else missed.push(`${place.key} ${slip.id}: ${said}`);
          break;
        }
        for (const { key } of rows) await put(page, key, '');
      }
    }
    expect(missed).toEqual([]);
    const can = places.some(({ id: step }) => slipsOf(steps.step(step)).length > 0);
    if (can) expect(told).toBeGreaterThan(0);
    await page.browserContext().close();
  });

  it('has every mark gone when it is cleared', async () => {
    const page = await open(id);
    await put(page, places[0]!.key, '77.77');
    expect((await marks(page)).filter((mark) => mark !== '')).toHaveLength(1);
    await page.$eval('[data-do="clear"]', (button) => (button as HTMLElement).click());
    expect(new Set(await marks(page))).toEqual(new Set(['']));
    await page.browserContext().close();
  });
});
