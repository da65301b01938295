import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { prepareMarking } from '../../generators/cli/prepare-marking.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { type Decimal, readEntry } from '../../generators/marking/entry.ts';
import { markClass } from '../../generators/marking/mark-class.ts';
import { remarks } from '../../generators/marking/remarks.ts';
import { shownMarks } from '../../generators/marking/shown.ts';
import { type Standing, standings } from '../../generators/marking/standing.ts';
import { saidOf } from '../../generators/practice/typing/says.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { scratch } from '../cli/slidewire.ts';
import { classOf, schemeNamed } from './classes.ts';
import { messy } from './messy.ts';
import { simulate } from './simulated-class.ts';
import { nameOf, openTyping } from './typing-page.ts';

const { at } = scratch();
const words = loadMarkingWords('en');
const STUDENTS = Number(process.env['SLIDEWIRE_SHEETS'] ?? 24);

let browser: Browser;
beforeAll(async () => {
  browser = await launch(await findBrowser());
});
afterAll(() => browser.close());

/** What is to be seen that all of this is met. */
const met = new Set<string>();

/** With wires and settings that make forms and conventions of many kinds, one scheme or another, a point or a comma. */
const CASES: [id: string, more: string, scheme: string, decimal: Decimal][] = [
  ['resistivity', 'drawn: [scale, gauge]\n', 'practical', 'point'],
  ['which-material', '', 'strict', 'comma'],
  ['interchange', '', 'practical', 'comma'],
  ['gauge-drill', '', 'answers', 'point'],
  ['series-parallel', '', 'practical', 'point'],
];

describe.each(CASES)('%s (%j, scheme %s, decimal %s): the page for typing answers', (id, more, scheme, decimal) => {
  test(`judges ${STUDENTS} sheets of honest, slipped, blank, struck out and unreadable answers as they are marked: every verdict, slip, range and mark`, async () => {
    const rules = schemeNamed(scheme);
    const made = classOf(STUDENTS, `experiment: ${id}\n${more}`, 'typing', rules);
    const experiment = experimentNamed(id);
    const random = streams('typing').of(id, scheme);
    const rows = simulate(experiment, made, random).map((row) => {
      const texts = messy(row.texts, made.columns, random).map((text) => (decimal === 'comma' ? text.replaceAll('.', ',') : text));
      return { ...row, texts, entries: texts.map((text) => readEntry(text, decimal)) };
    });
    await prepareMarking(at(id + scheme), { ...made, order: { ...made.order, decimal }, scheme: rules });
    const typing = await openTyping(browser, at(id + scheme));
    const marked = markClass(experiment, made.issues, rows, made.columns, rules);
    for (const [place, { issue, texts }] of rows.entries()) {
      await typing.paste(place, texts);
      const { answers, total, full } = marked[place]!;
      const shown = await typing.shown();
      const stand = standings(issue.sheet, programOf(experiment, issue.sheet), answers);
      expect(shown, issue.code).toEqual({
        answers: answers.map((answer, i) => saidOf(answer, stand[i]!, decimal, words)),
        total: expect.stringMatching(`^${shownMarks(total)} of ${shownMarks(full)} marks( so far)?$`),
      });
      stand.forEach((each) => met.add(each));
      // What the feedback says of a wrong answer stands beside it here.
      for (const [i, answer] of answers.entries()) {
        if (answer.explanations.length !== 1) continue;
        const [said] = remarks([answer], () => '', words);
        expect(said!.slice(2), nameOf(issue, answer.column)).toContain(shown.answers[i]!.note.split('. ')[0]!);
        met.add(answer.explanations[0]!.slip);
      }
    }
    expect(typing.asked).toEqual([expect.stringMatching(/^file:.*typing\.html$/)]);
    await typing.page.close();
  });
});

test('every way for an answer to stand was met, and more than ten slips', () => {
  const all: Standing[] = ['right', 'carried forward', 'right by the key', 'wrong', 'unreadable', 'not entered', 'left blank', 'struck out'];
  expect(all.filter((standing) => !met.has(standing))).toEqual([]);
  expect(met.size - all.length).toBeGreaterThan(10);
});
