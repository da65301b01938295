import { fileURLToPath } from 'node:url';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { directionsOf } from '../../generators/cli/site/question-page.ts';
import { checkAll, readNumber } from '../../generators/practice/check.ts';
import { directionOf, makeQuestion } from '../../generators/practice/questions/make-question.ts';
import { placesOf, sheetOf } from '../../generators/practice/questions/places.ts';
import { questionFormulas } from '../../generators/practice/questions/ready-formulas.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { bundle } from '../../generators/press/bundle.ts';
import { findBrowser } from '../../generators/press/browser.ts';
import { launch } from '../../generators/press/launch.ts';
import { round } from '../../generators/quantities/written.ts';
import { balance } from '../../generators/questions/families/balance.ts';
import type { Body, Family } from '../../generators/questions/family.ts';
import { families, familyNamed } from '../../generators/questions/index.ts';
import { questionsInBits } from './question-bits.ts';

const IDS = families.map(({ id }) => id);
const CODES = Array.from({ length: 24 }, (_, i) => 41_000 * i + 5);

describe('practice questions in a page', () => {
  let page: Page;
  beforeAll(async () => {
    const here = fileURLToPath(new URL('./', import.meta.url));
    const contents = `
      import { families } from '../../generators/questions/index.ts';
      import { provideFormulas } from '../../generators/practice/formula.ts';
      import { questionsInBits } from './question-bits.ts';
      provideFormulas(Object.assign({}, ${families.map((family) => questionFormulas(directionsOf(family))).join(',')}));
      globalThis.questions = (id, codes) => questionsInBits(families.find((family) => family.id === id), codes);`;
    const script = await bundle({ stdin: { contents, resolveDir: here, loader: 'ts' } });
    page = await (await launch(await findBrowser())).newPage();
    await page.evaluate(script);
  }, 60_000);
  afterAll(() => page.browser().close());

  it.each(IDS)('of %s have the same bits as in Node', async (id) => {
    expect(await page.evaluate(`questions(${JSON.stringify(id)}, ${JSON.stringify(CODES)})`)).toEqual(questionsInBits(familyNamed(id), CODES));
  });
});

describe('practice questions', () => {
  it('ask, one set after another, in every direction and arrangement', () => {
    for (const family of families) {
      const asked = Array.from({ length: 600 }, (_, set) => directionOf(family, setCode(set)));
      const seen = new Set(asked.map(({ name, choice }) => JSON.stringify([name, choice])));
      expect(seen.size, family.id).toBe(directionsOf(family).length);
    }
  });

  it('take what a student picks, and leave the rest to the set', () => {
    for (const { family, name, choice } of families.flatMap(directionsOf)) {
      const { direction } = makeQuestion(family, setCode(9), { ask: name, choice }).question;
      expect([direction.name, direction.choice]).toEqual([name, choice]);
    }
    const own = makeQuestion(familyNamed('shunt'), setCode(77)).question;
    const { direction, readings } = makeQuestion(familyNamed('shunt'), setCode(77), { ask: own.direction.name, choice: {} }).question;
    expect([direction.choice, readings]).toEqual([own.direction.choice, own.readings]);
    expect(makeQuestion(familyNamed('shunt'), setCode(77), { ask: 'nobody asks so', choice: { gap: 'middle' } }).question.readings).toEqual(own.readings);
  });

  it('are found where the first draw gives nothing worth printing', () => {
    let draws = 0;
    const draw = () => (draws++ < 6000 ? { P: '-10', l: '40.0' } : { P: '10', l: '40.0' });
    const slow: Family = { ...balance, body: { ...(balance.body as Body), draw } };
    expect(makeQuestion(slow, setCode(5), { ask: 'right', choice: {} }).question.readings).toMatchObject({ P: '10', l: '40.0' });
    expect(draws).toBeGreaterThan(6000);
  });

  it('come in another arrangement where the set of the code has not what is picked', () => {
    const { direction } = makeQuestion(familyNamed('wheatstone'), setCode(1), { ask: 'shunt', choice: {} }).question;
    for (let set = 0; set < 20; set++) expect(makeQuestion(familyNamed('wheatstone'), setCode(set), { ask: 'shunt', choice: {} }).question.direction.name).toBe('shunt');
    expect(direction.choice).toEqual({ arm: 'shunted' });
  });

  it('accept the key, as answers alone and with every line, and name each slip in the answer it shows in', { timeout: 60_000 }, () => {
    for (const { family, name, choice } of families.flatMap(directionsOf)) {
      const { question } = makeQuestion(family, setCode(321), { ask: name, choice });
      const places = placesOf(question);
      const known = (texts: Record<string, string>) => new Map(checkAll(sheetOf(question), question.direction.program, places, texts).map((answer, i) => [places[i]!.key, answer]));
      const right = { is: 'right', byTheKey: false, extraFigures: 0, wrongUnit: false };
      const whole = Object.fromEntries(places.map(({ id, row, key }) => [key, question.values.written.get(id)![row]!]));
      for (const answer of known(whole).values()) expect(answer, `${family.id}, ${name}`).toEqual(right);
      const alone = Object.fromEntries(question.answers.map(({ id, shown }) => [`${id}:0`, shown]));
      for (const key of Object.keys(alone)) expect(known(alone).get(key), `${family.id}, ${name}`).toEqual(right);
      for (const { id, answers } of question.slips) {
        const named = Object.entries(answers).some(([find, value]) => {
          const answer = known({ [`${find}:0`]: round(value, { figures: 4 }, 'even') }).get(`${find}:0`)!;
          return answer.is === 'wrong' && answer.explanations.some(({ slip }) => slip === id);
        });
        expect(named, `${family.id}, ${name}: ${id}`).toBe(true);
      }
    }
  });
});

describe('a number that a student writes', () => {
  it('may be a fraction of whole numbers, with its unit', () => {
    expect(readNumber('58/3 Ω')).toMatchObject({ is: 'number', written: '19.33333333', unit: { of: 'Ω' } });
    expect(readNumber(' −1 / 4')).toMatchObject({ is: 'number', written: expect.stringMatching(/^-0\.250*$/) });
    expect(readNumber('3/0').is).toBe('unreadable');
    expect(readNumber('0.02 Ω/cm')).toMatchObject({ is: 'number', written: '0.02', unit: { of: 'm^-1 Ω' } });
  });
});
