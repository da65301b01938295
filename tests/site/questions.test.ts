import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { setCode } from '../../generators/practice/set-code.ts';
import { round } from '../../generators/quantities/written.ts';
import { familyNamed } from '../../generators/questions/index.ts';
import { asked, markAt, saidAt, textAt, write } from './asked.ts';
import { type Built, builtOf, keptOffline, openPage } from './built.ts';

const CODE = setCode(48213);

let built: Built;
beforeAll(async () => {
  built = await builtOf({ experiments: [], myReadings: false, families: ['shunt', 'balance', 'resistivity', 'temperature', 'kelvin', 'assertion-reason'].map(familyNamed) });
}, 180_000);
afterAll(() => built.close());

const address = (id: string, code = CODE, wish = '') => `questions/${id}.html#${code}${wish}`;

describe.each(['file', 'http'] as const)('a page of questions from %s', (from) => {
  it('makes the same question again for the same code and picks, and another for another', async () => {
    const page = await openPage(built, built[from](address('shunt')));
    const first = await textAt(page, '[data-slot="question"]');
    await page.click('[data-do="fresh"]');
    await page.waitForFunction((before) => location.hash !== before, {}, `#${CODE}`);
    expect(await textAt(page, '[data-slot="question"]')).not.toBe(first);
    await page.click('.tools summary');
    await page.type('#set-code', '048 213');
    await page.click('[data-do="open-code"]');
    await page.waitForFunction((code) => location.hash === code, {}, `#${CODE}`);
    expect(await textAt(page, '[data-slot="question"]')).toBe(first);
    expect(await textAt(page, '[data-slot="code"]')).toBe(CODE);
    await page.click('summary::-p-text(Pick what is asked)');
    await page.select('[data-wish="ask"]', 'shift, gap unknown');
    await page.select('[data-wish="gap"]', 'right');
    await page.waitForFunction(() => location.hash.includes('gap=right'));
    const picked = asked('shunt', CODE, { ask: 'shift, gap unknown', choice: { gap: 'right' } }).text;
    expect(await textAt(page, '[data-slot="question"]')).toBe(picked);
    await page.reload();
    expect(await textAt(page, '[data-slot="question"]')).toBe(picked);
    expect(await page.$eval('[data-wish="ask"]', (list) => (list as HTMLSelectElement).value)).toBe('shift, gap unknown');
    await page.click('[data-do="fresh"]');
    await page.waitForFunction((code) => !location.hash.startsWith(code), {}, `#${CODE}`);
    expect(await page.evaluate(() => location.hash)).toContain('gap=right');
    expect(page.complaints).toEqual([]);
    await page.browserContext().close();
  });
});

describe('a page of questions', () => {
  const RESISTOR = '?ask=resistor&gap=left';
  const resistor = () => asked('shunt', CODE, { ask: 'resistor', choice: { gap: 'left' } });

  it('takes a run as a student types it, line by line, with Enter from one to the next', async () => {
    const page = await openPage(built, built.file(address('shunt', CODE, RESISTOR)));
    const { made } = resistor();
    await page.click('[data-do="open-line"]');
    await page.click('[data-do="open-line"]');
    await page.focus('[data-place="X:0"] input');
    for (const id of ['X', 'C', 'S']) {
      expect(await page.evaluate(() => document.activeElement!.closest<HTMLElement>('[data-place]')!.dataset['place'])).toBe(`${id}:0`);
      await page.keyboard.type(made.question.values.written.get(id)![0]!);
      await page.keyboard.press('Enter');
    }
    for (const id of ['X', 'C', 'S']) expect(await markAt(page, `${id}:0`), id).toBe('right');
    expect(await textAt(page, '[data-progress]')).toBe('Right, all of it.');
    await page.browserContext().close();
  });

  it('works without a connection after a visit of any page', { timeout: 60_000 }, async () => {
    const page = await openPage(built, built.http('index.html'));
    await keptOffline(page, ...['engine.js', 'kelvin.html', 'kelvin.js'].map((file) => built.http(`questions/${file}`)));
    built.connect(false);
    await page.goto(built.http(address('kelvin')));
    expect(await textAt(page, '[data-slot="question"]')).toBe(asked('kelvin', CODE).text);
    // The address of the folder is that of its start.
    await page.goto(built.http(''));
    expect(await page.$$('a[href$="questions.html"]')).not.toEqual([]);
    built.connect(true);
    await page.browserContext().close();
  });

  it('hints first at what to look at, opening the line that is missing, then gives the formula, then the numbers', async () => {
    const page = await openPage(built, built.file(address('shunt', CODE, RESISTOR)));
    const lines = () => page.$$eval('[data-line="S"] [data-said] .lines p', (all) => all.length);
    const open = () => page.$$eval('[data-line]:not([hidden])', (all) => all.map((line) => (line as HTMLElement).dataset['line']));
    expect(await open()).toEqual(['S']);
    await write(page, 'S:0', '7777');
    expect(await saidAt(page, 'S:0')).toContain('Work out X first');
    expect(await open()).toEqual(['X', 'S']);
    expect(await lines()).toBe(0);
    await write(page, 'S:0', '5555');
    expect(await lines()).toBe(1);
    await write(page, 'S:0', '3333');
    expect(await lines()).toBe(2);
    await page.click('[data-line="S"] [data-said] button');
    expect(await lines()).toBe(3);
    await page.browserContext().close();
  });

  it('opens no working before an entry, and the lines to fill in one by one', async () => {
    const page = await openPage(built, built.file(address('shunt', CODE, RESISTOR)));
    await page.focus('[data-place="S:0"] input');
    expect(await page.$$('[data-said] *')).toHaveLength(0);
    for (const expected of [['X', 'S'], ['X', 'C', 'S']]) {
      await page.click('[data-do="open-line"]');
      expect(await page.$$eval('[data-line]:not([hidden])', (all) => all.map((line) => (line as HTMLElement).dataset['line']))).toEqual(expected);
    }
    expect(await page.$eval('[data-do="open-line"]', (button) => (button as HTMLElement).hidden)).toBe(true);
    await page.browserContext().close();
  });

  it('takes an answer on the figures of the lines before it, right or wrong', async () => {
    const page = await openPage(built, built.file(address('shunt', CODE, RESISTOR)));
    const { made } = resistor();
    const C = made.question.values.exact.get('C')![0]!;
    // Twice what the two hold together: it is wrong, and what is put in parallel with it follows from it.
    const X = round(2 * C, { figures: 3 }, 'even');
    await page.click('[data-do="open-line"]');
    await write(page, 'X:0', X);
    expect(await markAt(page, 'X:0')).toBe('look again');
    await write(page, 'S:0', round((Number(X) * C) / (Number(X) - C), { figures: 3 }, 'even'));
    expect(await markAt(page, 'S:0')).toBe('right');
    await page.reload();
    expect(await markAt(page, 'X:0')).toBe('look again');
    expect(await page.$eval('[data-line="X"]', (line) => (line as HTMLElement).hidden)).toBe(false);
    await page.browserContext().close();
  });

  it('takes a value in another unit of its own, and asks for the unit where it belongs to another quantity', async () => {
    const page = await openPage(built, built.file(address('shunt', CODE, RESISTOR)));
    const { exact } = resistor().made.question.answers[0]!;
    await write(page, 'S:0', `${round(exact / 1000, { figures: 4 }, 'even')} kΩ`);
    expect(await markAt(page, 'S:0')).toBe('right');
    await write(page, 'S:0', `${round(exact, { figures: 4 }, 'even')} cm`);
    expect(await saidAt(page, 'S:0')).toContain('it is Ω');
    await page.browserContext().close();
  });

  it('takes the mantissa and the power of ten in two fields, its minus from a button', async () => {
    const page = await openPage(built, built.file(address('resistivity', CODE, '?ask=resistivity')));
    const { made } = asked('resistivity', CODE, { ask: 'resistivity', choice: {} });
    const { id, shown } = made.question.answers[0]!;
    const [mantissa, power] = shown.split('e-') as [string, string];
    const [first, second] = await page.$$(`[data-place="${id}:0"] input`);
    await first!.type(mantissa);
    await second!.type(power);
    await page.click(`[data-place="${id}:0"] .raised .sign`);
    expect(await markAt(page, `${id}:0`)).toBe('right');
    await page.browserContext().close();
  });

  it('asks again for a choice that is wrong, with what to think of', async () => {
    const page = await openPage(built, built.file(address('assertion-reason')));
    const { made } = asked('assertion-reason', CODE);
    // No line is there to be left.
    expect(await page.$eval('[data-progress]', (told) => (told as HTMLElement).offsetParent)).toBeNull();
    const [wrong] = made.offered['judgement']!.filter((choice) => choice !== made.question.verdicts['judgement']);
    await page.click(`[data-verdict] input[value="${wrong}"]`);
    expect(await textAt(page, '[data-verdict] .mark')).toBe('look again');
    expect(await textAt(page, '[data-verdict] [role="status"]')).toContain('Judge each statement by itself first.');
    await page.click(`[data-verdict] input[value="${made.question.verdicts['judgement']}"]`);
    expect(await textAt(page, '[data-verdict] [role="status"]')).toBe('right ');
    await page.browserContext().close();
  });

  it('makes a fresh question within 50 ms', async () => {
    const page = await openPage(built, built.file(address('temperature', CODE, '?ask=coefficient&gap=right')));
    const times = await page.evaluate(async () => {
      const all: number[] = [];
      for (let set = 0; set < 30; set++) {
        const before = performance.now();
        const made = new Promise((done) => addEventListener('hashchange', done, { once: true }));
        history.replaceState(null, '', `#set-${String(700_000 + set)}?ask=coefficient&gap=right`);
        dispatchEvent(new HashChangeEvent('hashchange'));
        await made;
        all.push(performance.now() - before);
      }
      return all.sort((a, b) => a - b);
    });
    expect(times[15]!).toBeLessThan(50);
    await page.browserContext().close();
  });

  it('says so where someone gives a sheet code', async () => {
    const page = await openPage(built, built.file(address('balance')));
    const before = await textAt(page, '[data-slot="question"]');
    await page.click('.tools summary');
    await page.type('#set-code', 'K7QM-2D9P');
    await page.click('[data-do="open-code"]');
    expect(await textAt(page, '[data-told]')).toContain('Only your teacher has its key');
    expect(await textAt(page, '[data-slot="question"]')).toBe(before);
    await page.browserContext().close();
  });

  it('prints the question on one page and its key, turned over, on another', async () => {
    const page = await openPage(built, built.file(address('shunt')));
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await page.emulateMediaType('print');
    expect(await page.$eval('.key-page', (key) => [getComputedStyle(key).breakBefore, getComputedStyle(key).transform])).toEqual(['page', 'matrix(-1, 0, 0, -1, 0, 0)']);
    expect(await page.$$eval('button, select, .said', (all) => all.filter((each) => (each as HTMLElement).offsetParent !== null).length)).toBe(0);
    await page.browserContext().close();
  });
});
