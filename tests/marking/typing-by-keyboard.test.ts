import { readFileSync, statSync } from 'node:fs';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { prepareMarking } from '../../generators/cli/prepare-marking.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readAnswers } from '../../generators/marking/answers-file.ts';
import { headOf } from '../../generators/marking/heads.ts';
import { shownMarks } from '../../generators/marking/shown.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { ledgerText, makeLedger } from '../../generators/sheets/ledger.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { scratch, slidewire } from '../cli/slidewire.ts';
import { SECRET } from '../sheets/class.ts';
import { classOf, schemeNamed } from './classes.ts';
import { axeFinds } from '../axe.ts';
import { type TypingPage, openTyping } from './typing-page.ts';

const { at, write } = scratch();
const { typing: words, heads, slips } = loadMarkingWords('en');
const { symbols } = loadWords('en', 'resistivity').spoken;

let browser: Browser;
beforeAll(async () => {
  browser = await launch(await findBrowser());
});
afterAll(() => browser.close());

const made = classOf(6, 'title: Lanternfield (invented)\n', 'keyboard');
const { issues, columns } = made;
const worked = issues.map(({ sheet }) => workOut(sheet, programOf(experimentNamed('resistivity'), sheet)));
/** What the key says of a sheet's answer. */
const keyOf = (place: number, answer: number) => worked[place]!.values.written.get(columns[answer]!.id)![columns[answer]!.row]!;
const valueOf = (place: number, id: string) => worked[place]!.values.exact.get(id)![0]!;

describe('a class typed in by keyboard alone', () => {
  let typing: TypingPage;
  let file: Buffer;
  beforeAll(async () => {
    await prepareMarking(at('class'), made);
    typing = await openTyping(browser, at('class'));
  });
  const standsOf = (answer: number) => typing.textOf(`stands-${answer}`);

  test('says at once how each answer stands, adds the unit after a number, and lets another be typed in its place', async () => {
    await typing.type(keyOf(0, 0));
    expect(await standsOf(0)).toBe(words.right);
    expect(await typing.textOf('note-0')).toBe(words.unitCosts);
    expect(await typing.textOf('marks-0')).toBe('2½ of 3');
    await typing.press('Space');
    expect(await typing.textOf('marks-0')).toBe('3 of 3');
    await typing.type('mm');
    expect(await typing.page.$eval('#answer-0', (input) => (input as HTMLInputElement).value)).toBe(`${keyOf(0, 0)} mm`);
    expect(await typing.textOf('note-0')).toBe(words.unitWrong.replace('{unit}', 'Ω'));
    await typing.press(...Array(3).fill('Backspace'), 'Space', 'Enter');
    await typing.type('-');
    await typing.press('ArrowDown');
    await typing.type('two');
    expect([await standsOf(1), await standsOf(2)]).toEqual([words.leftBlank, words.unreadable.replace('{why}', 'is no number')]);
    expect(await typing.textOf('note-3')).toBe(words.notEntered);
    expect(await typing.textOf('total')).toBe('3 of 17 marks so far');
  });

  test('names a slip in plain words, and says of what follows from it that the error is carried forward', async () => {
    await typing.press('PageDown');
    expect(await typing.textOf('sheet')).toBe(words.sheet.replace('{student}', '2 Student 2').replace('{code}', issues[1]!.code));
    // The resistance of the first row with its ratio upside down: the square of the known one over the right value.
    const R = Number([worked[1]!.values.written.get('R')!].flat()[0]);
    const slipped = (R * R) / Number(keyOf(1, 0));
    await typing.press('ArrowUp', 'ArrowUp');
    await typing.type(slipped.toPrecision(3));
    await typing.press('Space', 'Enter');
    expect(await standsOf(0)).toBe(words.wrong);
    expect(await typing.textOf('note-0')).toContain(slips['ratio inverted']!.says);
    // On the next sheet a diameter that is a fifth too large, and the resistivity that follows from it.
    await typing.press('PageDown');
    for (let i = 0; i < 3; i++) await typing.press('Enter');
    expect(await typing.page.evaluate('document.activeElement.id')).toBe('answer-4');
    const d = (1.2 * valueOf(2, 'd')).toPrecision(3);
    await typing.type(d);
    await typing.press('Space', 'Enter');
    await typing.type(((Number(d) / valueOf(2, 'd')) ** 2 * valueOf(2, 'rho')).toExponential(2).replace('e', '×10^'));
    await typing.press('Space');
    expect(await standsOf(4)).toBe(words.wrong);
    expect(await standsOf(5)).toBe(words.carried);
  });

  test('finds a sheet by roll, code or name, and says where there is none', async () => {
    const find = async (text: string) => {
      await typing.press('Escape');
      await typing.page.$eval('#find', (input) => ((input as HTMLInputElement).value = ''));
      await typing.type(text);
      await typing.press('Enter');
      return typing.textOf('sheet');
    };
    expect(await find('4')).toContain(issues[3]!.code);
    expect(await find(issues[5]!.code.toLowerCase())).toContain(issues[5]!.code);
    expect(await find('student 3')).toContain(issues[2]!.code);
    expect(await find('nobody')).toContain(issues[2]!.code);
    expect(await typing.textOf('found')).toBe(words.notFound.replace('{text}', 'nobody'));
  });

  test('goes on from the last answer to the next student, keeps what is typed, and comes back to the first sheet that is not complete', async () => {
    await typing.choose(0);
    for (const [answer, text] of [['2', keyOf(0, 2)], ['3', 'x'], ['4', keyOf(0, 4)], ['5', keyOf(0, 5)], ['6', keyOf(0, 6)]] as const) {
      await typing.page.focus(`#answer-${answer}`);
      await typing.page.$eval(`#answer-${answer}`, (input) => (input as HTMLInputElement).select());
      await typing.type(text);
      await typing.press('Space');
      await typing.press('Enter');
    }
    expect(await typing.textOf('sheet')).toContain(issues[1]!.code);
    expect(await typing.textOf('done')).toBe('1 of 6 sheets complete');
    expect(await typing.page.$eval('#student', (select) => (select as HTMLSelectElement).options[0]!.textContent)).toBe('1 Student 1, complete');
    await typing.page.reload();
    expect(await typing.textOf('sheet')).toContain(issues[1]!.code);
    expect(await typing.textOf('note-0')).toContain(slips['ratio inverted']!.says);
  });

  test('is saved as the file that slidewire mark takes as it is, for the same marks', async () => {
    await typing.paste(0, ['2.6.1']);
    await typing.save();
    expect(await typing.textOf('kept')).toBe(`${words.saved} ${words.unread.replace('{count}', '1').replace('{roll}', '1')}`);
    await typing.paste(0, [`${keyOf(0, 0)} Ω`]);
    expect(await typing.textOf('kept')).toBe('');
    file = await typing.save();
    expect(await typing.textOf('kept')).toBe(words.saved);
    expect(file.subarray(0, 3)).toEqual(Buffer.from('\ufeff'));
    const ledger = write('ledger.json', ledgerText(makeLedger({ kind: 'assessed', secret: SECRET, orderDigest: 'a'.repeat(64), order: made.order }, issues)));
    const run = await slidewire(['mark', ledger, write('answers.csv', file), '--out', at('marked'), '--pdf', 'no']);
    expect(run.code, run.err).toBe(0);
    const [, ...rows] = readFileSync(at('marked', 'marks.csv'), 'utf8').trim().split('\r\n').map((line) => line.split(','));
    for (const [place, row] of rows.entries()) {
      await typing.choose(place);
      const { answers, total } = await typing.shown();
      const marks = row.slice(5, 5 + columns.length).map((cell) => (cell === '' ? '' : shownMarks(Number(cell))));
      expect(answers.map(({ marks: of }, i) => (of === '' && marks[i] === '0' ? '0' : of.split(' ')[0]))).toEqual(marks);
      expect(total.split(' ')[0]).toBe(row[3] === '' ? '0' : shownMarks(Number(row[3])));
    }
  });

  test('an answer that the page cannot read is the one that slidewire mark refuses, by row and column', async () => {
    await typing.paste(4, ['2,63 Ω']);
    expect(await standsOf(0)).toBe('Cannot be read: it has a comma where the decimal sign is a point');
    const run = await slidewire(['mark', at('ledger.json'), write('unread.csv', await typing.save()), '--out', at('refused'), '--pdf', 'no']);
    expect(run).toMatchObject({ code: 1, err: expect.stringContaining(`unread.csv, row 6, ${headOf(columns[0]!, symbols, heads)}: "2,63 Ω" has a comma where the decimal sign is a point`) });
    await typing.paste(4, ['']);
  });

  test('shows the text of the file to be copied, where nothing is saved', async () => {
    await typing.page.click('summary');
    // A browser tells of what was opened a moment later.
    await typing.page.waitForFunction(`document.getElementById('text').value !== ''`);
    const text = await typing.page.$eval('#text', (area) => (area as HTMLTextAreaElement).value);
    const layout = { columns, symbols, heads, decimal: 'point' as const, words: loadMarkingWords('en') };
    const read = (bytes: Uint8Array) => readAnswers(bytes, 'answers.csv', issues, layout).rows.map(({ texts }) => texts);
    expect(read(new TextEncoder().encode(text))).toEqual(read(file));
  });

  test('fits a screen 390 px wide, marks beside no other word', async () => {
    const before = typing.page.viewport();
    await typing.page.setViewport({ width: 390, height: 844 });
    expect(await typing.page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
    const boxes = (await typing.page.evaluate(`['marks', 'stands'].map((id) => document.getElementById(id + '-0').getBoundingClientRect().toJSON())`)) as { top: number; bottom: number }[];
    expect(boxes[0]!.bottom).toBeLessThanOrEqual(boxes[1]!.top);
    await typing.page.setViewport(before);
  });

  test('asks for nothing but itself, runs no script but its own, and is read out as it should be', async () => {
    expect(await typing.page.evaluate(`new Promise((done) => { addEventListener('securitypolicyviolation', () => done('refused')); const script = document.createElement('script'); script.textContent = 'document.title = "broken in"'; script.onload = done; document.body.append(script); })`)).toBe('refused');
    expect(await typing.page.title()).toBe(words.title);
    expect(typing.asked.filter((address) => !/^file:.*typing\.html$|Content Security Policy/.test(address))).toEqual([]);
    expect(await axeFinds(typing.page)).toEqual([]);
  });
});

test('where units are assumed, space adds none, and ! says that one is missing', async () => {
  const other = classOf(2, '', 'keyboard', schemeNamed('strict'));
  await prepareMarking(at('assumed'), { ...other, scheme: { ...schemeNamed('practical'), units: 'assumed' } });
  const typing = await openTyping(browser, at('assumed'));
  await typing.type('2.5 !');
  expect(await typing.page.$eval('#answer-0', (input) => (input as HTMLInputElement).value)).toBe('2.5 !');
  expect(await typing.textOf('note-0')).toContain(words.unitCosts);
});

test('a name that looks like markup or a formula is text, in the page and in its file', async () => {
  const names = ['</script><script>document.title = "broken in"</script>', '=HYPERLINK("x")'];
  await prepareMarking(at('names'), { order: made.order, issues: names.map((name, i) => ({ ...issues[i]!, name })) });
  const typing = await openTyping(browser, at('names'));
  await typing.choose(0);
  expect(await typing.textOf('sheet')).toContain(names[0]!);
  expect(await typing.page.title()).toBe(words.title);
  const lines = (await typing.save()).toString().split('\r\n');
  expect(lines[2]).toMatch(/^2,"'=HYPERLINK\(""x""\)",/);
});

test('2000 students are in a page under a megabyte, which opens without judging them all', async () => {
  const many = Array.from({ length: 2000 }, (_, i) => ({ ...issues[i % issues.length]!, roll: String(i + 1), name: `Student ${i + 1}`, code: `K${String(i).padStart(3, '0')}-2222` }));
  await prepareMarking(at('many'), { order: made.order, issues: many });
  expect(statSync(at('many', 'typing.html')).size).toBeLessThan(1e6);
  const from = performance.now();
  const typing = await openTyping(browser, at('many'));
  await typing.choose(1999);
  expect(await typing.textOf('sheet')).toContain('2000 Student 2000');
  // Half a second where nothing else runs; to judge them all takes twenty.
  expect(performance.now() - from).toBeLessThan(8000);
});
