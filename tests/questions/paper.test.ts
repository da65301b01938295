import { describe, expect, test } from 'vitest';
import { loadFamilyWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { UserMistake } from '../../generators/mistake.ts';
import { markTable, unmet } from '../../generators/questions/demands.ts';
import { csv } from '../../generators/questions/export.ts';
import { directions } from '../../generators/questions/direction.ts';
import { families, familyNamed } from '../../generators/questions/index.ts';
import { type PaperItem, type Version, keyOf, makeVersions } from '../../generators/questions/paper.ts';
import { versionView } from '../../generators/questions/paper-view.ts';
import { streams } from '../../generators/random.ts';

const shared = loadQuestionWords('en');
const item = (family: string, rest: Partial<PaperItem> = {}): PaperItem => ({ family: familyNamed(family), choice: {}, form: 'numeric', ...rest });
const mixed = [item('balance', { form: 'choice', direction: 'right' }), item('viva', { form: 'choice' }), item('shunt'), item('series', { form: 'structured', direction: 'both' }), item('faulty-gap')];

const made = (items: readonly PaperItem[], count: number, seed: string, used?: ReadonlySet<string>): Version[] =>
  makeVersions(items, Array.from({ length: count }, (_, i) => 'ABCDEF'[i]!), streams(seed), used);

/** A random paper: three families, two versions. */
const random = (i: number) => {
  const draw = streams('papers').of(i);
  return made(draw.shuffle(families).slice(0, 3).map((family) => item(family.id)), 2, `paper ${i}`);
};

describe('versions of a paper', () => {
  test('have the same families, directions, forms and marks, and all numbers differ beyond rounding', () => {
    for (let i = 0; i < 100; i++) {
      const [a, b] = random(i) as [Version, Version];
      expect(markTable(a)).toEqual(markTable(b));
      a.questions.forEach(({ question }, place) => {
        const other = b.questions[place]!.question;
        expect([other.direction.family.id, other.direction.name]).toEqual([question.direction.family.id, question.direction.name]);
        question.answers.forEach((answer, k) => expect(answer.exact.toPrecision(3), `${question.direction.family.id}, ${question.direction.name}`).not.toBe(other.answers[k]!.exact.toPrecision(3)));
        expect(keyOf(question)).not.toBe(keyOf(other));
      });
    }
  });

  test('where the answer is in words, the situation differs', () => {
    const versions = made([item('viva', { form: 'choice' })], 4, 'words');
    expect(new Set(versions.map(({ questions }) => JSON.stringify(questions[0]!.question.direction.choice))).size).toBe(4);
  });

  test('the same seed gives the same paper, another seed another', () => {
    const texts = (seed: string) => csv(made(mixed, 2, seed).map((version) => ({ name: version.name, questions: versionView(version, (id) => loadFamilyWords('en', id), shared) })));
    expect(texts('one')).toBe(texts('one'));
    expect(texts('one')).not.toBe(texts('two'));
  });

  test('no question of an earlier paper comes again', () => {
    const earlier = new Set(made(mixed, 3, 'first').flatMap(({ questions }) => questions.map(({ question }) => keyOf(question))));
    const later = made(mixed.slice(0, 1), 3, 'first', earlier).flatMap(({ questions }) => questions.map(({ question }) => keyOf(question)));
    expect(later.filter((key) => earlier.has(key))).toEqual([]);
  });
});

describe('options', () => {
  const papers = Array.from({ length: 25 }, (_, i) => made(Array.from({ length: 4 }, () => item('balance', { form: 'choice', direction: 'right' })), 1, `options ${i}`)[0]!);
  const all = papers.flatMap(({ questions }) => questions.map((one) => one.options!));

  test('rise or fall in size, one right, the others the values of slips, none alike', () => {
    for (const options of all) {
      const values = options.map(({ value }) => value as number);
      expect([[...values].sort((a, b) => a - b), [...values].sort((a, b) => b - a)]).toContainEqual(values);
      expect(options.filter(({ isRight }) => isRight)).toHaveLength(1);
      for (const { slip, isRight } of options) expect(slip === undefined).toBe(isRight);
      expect(new Set(values.map((value) => value.toPrecision(3))).size).toBe(values.length);
    }
  });

  test('the right letter is about as often each of the four', () => {
    const counts = [0, 1, 2, 3].map((place) => all.filter((options) => options[place]?.isRight).length);
    for (const count of counts) expect(count).toBeGreaterThan(all.length / 8);
  });
});

describe('a demand that cannot be met is told with its question', () => {
  test.each([
    [[item('combination', { form: 'choice', direction: 'each' })], 'questions 1: combination: it has no direction "each" for the form choice'],
    [[item('balance'), item('interchange', { form: 'choice', direction: 'mirror' })], 'questions 2: interchange: mirror has too few slips'],
  ])('%#', (items, message) => {
    expect(() => made(items, 2, 'bad')).toThrow(UserMistake);
    expect(() => made(items, 2, 'bad')).toThrow(message);
  });

  test('more versions than a family has situations for', () => {
    expect(() => made([item('viva', { choice: { topic: 'cell' } })], 2, 'bad')).toThrow('its values leave no 2 questions');
  });

  test('marks that the questions do not come to', () => {
    const table = markTable(made([item('balance', { direction: 'right' })], 1, 'marks')[0]!);
    expect(unmet(table, { total: 2, topics: { 'metre-bridge': 2 } })).toEqual([]);
    expect(unmet(table, { total: 5, levels: { 3: 2 } }).map(({ what }) => what)).toEqual(['5 are asked, the questions come to 2', '2 are asked, the questions come to 0']);
  });
});

test('every direction that options are asked of has enough that show, or is refused', () => {
  const offered = families.flatMap((family) => directions(family).filter(({ ask }) => ask.finds.length === 1));
  const withOptions = offered.filter(({ family, name }) => {
    try {
      return made([item(family.id, { form: 'choice', direction: name })], 1, 'each')[0]!.questions[0]!.options!.length >= 2;
    } catch (error) {
      expect(error).toBeInstanceOf(UserMistake);
      return false;
    }
  });
  expect(withOptions.length).toBeGreaterThan(20);
});
