import { describe, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { markTable, unmet } from '../../generators/papers/demands.ts';
import { type Entry, isInWords } from '../../generators/papers/entry.ts';
import { readOff } from '../../generators/papers/figures.ts';
import { keyOf } from '../../generators/papers/item.ts';
import { rightPlace } from '../../generators/papers/options.ts';
import { type PaperPlan, type Version, keysOf, makePaper, selection } from '../../generators/papers/paper.ts';
import { pool } from '../../generators/papers/pool.ts';
import { question } from '../../generators/questions/question.ts';
import { streams } from '../../generators/random.ts';

const all = pool('sample');
const letters = (count: number) => Array.from({ length: count }, (_, i) => ({ name: String.fromCharCode(65 + i) }));
const entry = (name: string, form: string) => all.find((one) => one.question === name && one.form === form)!;

const made = (plan: Partial<PaperPlan>, seed: string): Version[] => makePaper({ set: [], pool: all, demands: {}, whose: letters(3), isClass: false, used: new Set(), ...plan }, streams(seed));

const partsOf = (version: Version) => version.items.flatMap(({ parts }) => parts);
const distinct = (values: readonly unknown[]) => new Set(values).size === values.length;

describe('versions of a paper', () => {
  // Every question that a paper can be put together from, in papers of twelve.
  const papers = Array.from({ length: Math.ceil(all.length / 12) }, (_, i) => made({ set: all.slice(12 * i, 12 * i + 12) }, `all ${i}`));

  test('have the same questions, forms and marks', () => {
    for (const versions of papers) {
      const [first, ...others] = versions.map(({ items }) => markTable(items.map((item) => item.entry)));
      for (const other of others) expect(other).toEqual(first);
      for (const { items } of versions) expect(items.map((item) => item.entry.question)).toEqual(versions[0]!.items.map((item) => item.entry.question));
    }
  });

  test('differ in every number that is asked, to three figures', () => {
    for (const versions of papers) {
      const columns = versions.map((version) => partsOf(version).map(({ question: { answers } }) => answers.map(({ exact }) => exact.toPrecision(3))));
      columns[0]!.forEach((answers, place) => answers.forEach((_, k) => expect(distinct(columns.map((column) => column[place]![k])), versions[0]!.items.map((item) => item.entry.question).join('; ')).toBe(true)));
    }
  });

  test('where the answer is in words, have another situation or other options', () => {
    for (const versions of papers) {
      const columns = versions.map((version) => partsOf(version).map(({ question: one, options }) => JSON.stringify([keyOf(one), options?.map(({ value }) => value)])));
      columns[0]!.forEach((_, place) => expect(distinct(columns.map((column) => column[place]))).toBe(true));
    }
  });

  test('have no question twice', () => {
    for (const version of papers.flat()) expect(distinct(partsOf(version).map(({ question: one }) => keyOf(one)))).toBe(true);
  });

  test('have options in order of size, none alike, one right, the others the values of named slips', () => {
    for (const { question: one, options } of papers.flat().flatMap(partsOf)) {
      if (!options) continue;
      expect(options.filter(({ isRight }) => isRight)).toHaveLength(1);
      if (isInWords(one.direction)) {
        expect(distinct(options.map(({ value }) => value))).toBe(true);
        continue;
      }
      const values = options.map(({ value }) => value as number);
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(distinct(values.map((value) => value.toPrecision(3))), values.join()).toBe(true);
      for (const { slip, isRight, value } of options) {
        if (isRight) expect(value).toBe(one.answers[0]!.exact);
        else expect(one.slips[slip!]!.answers[one.answers[0]!.id]).toBe(value);
      }
    }
  });

  test('accept off a figure what each reading within its latitude gives', () => {
    const figures = papers.flat().flatMap(partsOf).filter(({ form }) => form === 'figure');
    expect(figures.length).toBeGreaterThan(10);
    for (const { question: one, accept } of figures) {
      for (const readings of readOff(one.direction, one.readings)) {
        const { exact } = question(one.direction, readings).answers[0]!;
        // What binary arithmetic leaves of 0.55 may lie below it.
        expect(exact * (1 + 1e-12)).toBeGreaterThanOrEqual(accept[0]![0]);
        expect(exact * (1 - 1e-12)).toBeLessThanOrEqual(accept[0]![1]);
        expect(exact).not.toBe(one.answers[0]!.exact);
      }
    }
  });
});

describe('right options, among questions with as many options,', () => {
  const some = all.filter((one) => one.form === 'choice' || one.form === 'assertion');
  const draw = streams('letters').of();
  const papers = Array.from({ length: 24 }, (_, i) => made({ set: draw.shuffle(some).slice(0, 16), whose: letters(2) }, `letters ${i}`)).flat();
  const places = (version: Version, size: number) => partsOf(version).flatMap(({ options }) => (options!.length === size ? [rightPlace(options!)] : []));
  const counted = (list: readonly number[], size: number) => Array.from({ length: size }, (_, place) => list.filter((one) => one === place).length);

  // The 5 % points of chi-square for two and three degrees of freedom (any table of it).
  test.each([[3, 5.99], [4, 7.81]])('of %i stand at each letter about as often, in every paper and over all', (size, limit) => {
    for (const version of papers) {
      const own = counted(places(version, size), size);
      expect(Math.max(...own) - Math.min(...own), own.join()).toBeLessThanOrEqual(4);
    }
    const counts = counted(papers.flatMap((version) => places(version, size)), size);
    const fair = counts.reduce((sum, count) => sum + count, 0) / size;
    expect(fair).toBeGreaterThan(40);
    expect(counts.reduce((sum, count) => sum + (count - fair) ** 2 / fair, 0), counts.join()).toBeLessThan(limit);
  });

  test('have no pattern such as A, B, C, A, B, C: the same letter twice running comes too', () => {
    const running = papers.flatMap((version) => places(version, 3));
    const repeats = running.filter((place, i) => place === running[i - 1]).length;
    expect(repeats).toBeGreaterThan(running.length / 20);
  });
});

describe('a paper for each candidate', () => {
  const whose = Array.from({ length: 25 }, (_, i) => ({ name: `Candidate ${i + 1}`, roll: String(i + 1) }));
  const set = [entry('balance right', 'choice'), entry('shunt resistor', 'numeric'), entry('viva answer', 'words'), entry('screw-gauge known', 'figure')];
  const versions = made({ set, whose, isClass: true }, 'class');

  test('has numbers that no other candidate has', () => {
    for (const place of [0, 1, 3]) expect(distinct(versions.map((version) => keyOf(partsOf(version)[place]!.question)))).toBe(true);
    expect(versions.map(({ roll }) => roll)).toEqual(whose.map(({ roll }) => roll));
  });

  test('and answers that differ from those of the neighbours in the list', () => {
    for (const place of [0, 1, 3]) {
      const answers = versions.map((version) => partsOf(version)[place]!.question.answers[0]!.exact.toPrecision(3));
      answers.forEach((answer, i) => expect(answers.slice(Math.max(0, i - 4), i)).not.toContain(answer));
    }
  });
});

describe('questions of earlier papers', () => {
  const demands = { total: 20, forms: { words: 2, assertion: 1 } };

  test('do not come again, over three years', () => {
    const used = new Set<string>();
    for (const year of ['one', 'two', 'three']) {
      const keys = keysOf(made({ demands, used }, `year ${year}`));
      expect(keys.filter((key) => used.has(key))).toEqual([]);
      for (const key of keys) used.add(key);
    }
  });

  test('nor does the same seed bring them back', () => {
    const first = keysOf(made({ demands }, 'same'));
    expect(keysOf(made({ demands }, 'same'))).toEqual(first);
    expect(keysOf(made({ demands, used: new Set(first) }, 'same')).filter((key) => first.includes(key))).toEqual([]);
  });

  test('leave none at last, which is told', () => {
    const statement = entry('assertion-reason judgement', 'assertion');
    const used = new Set(keysOf(made({ set: [statement], whose: letters(statement.parts[0]!.choices.length) }, 'many')));
    expect(() => made({ set: [statement], used, whose: letters(4) }, 'last')).toThrow(UserMistake);
    expect(() => made({ set: [statement], used, whose: letters(4) }, 'last')).toThrow('questions 1: assertion-reason judgement: all its questions were asked before');
  });
});

test('questions that cannot be had in so many versions give way to others, and the marks stay as asked', () => {
  const demands = { total: 60, topics: { wires: 12 }, forms: { choice: 8, figure: 8, assertion: 2 } };
  const first = selection({ set: [], pool: all, demands }, streams('give way')).map(({ question: name }) => name);
  const versions = made({ demands, whose: letters(26) }, 'give way');
  expect(versions).toHaveLength(26);
  expect(versions[0]!.items.map(({ entry: one }) => one.question)).not.toEqual(first);
  for (const { items } of versions) expect(unmet(markTable(items.map(({ entry: one }) => one)), demands)).toEqual([]);
  const columns = versions.map((version) => partsOf(version).map(({ question: { answers } }) => answers.map(({ exact }) => exact.toPrecision(3))));
  columns[0]!.forEach((answers, place) => answers.forEach((_, k) => expect(distinct(columns.map((column) => column[place]![k]))).toBe(true)));
});

test('where none is left to give way to, those that could not be had are named', () => {
  const demands = { topics: { temperature: 15 } };
  expect(() => made({ demands, whose: letters(200) }, 'none left')).toThrow(/^marks\.topics\.temperature: 15 are asked, .* \(without temperatures? .*, which cannot be had 200 times with answers that differ\)/);
});

test('more versions than a question has numbers for are refused, with the question', () => {
  const few: Entry = entry('carey-foster-wire wire', 'structured');
  const many = Array.from({ length: 400 }, (_, i) => ({ name: String(i) }));
  expect(() => made({ set: [few], whose: many }, 'many')).toThrow(/^questions 1: carey-foster-wire wire: its values leave no further question/);
});
