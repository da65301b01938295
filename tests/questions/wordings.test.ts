import { describe, expect, test } from 'vitest';
import { loadFamilyWords } from '../../generators/cli/question-words.ts';
import { arrangements, directions } from '../../generators/questions/direction.ts';
import { families, familyNamed } from '../../generators/questions/index.ts';

const blanksOf = (sentence: string) => [...new Set(Array.from(sentence.matchAll(/\{(\w+)\}/g), ([, name]) => name!))].sort();

const usualOf = (sentence: string) => sentence.toLowerCase().replace(/\W+/g, ' ').trim();

describe.each(families.map(({ id }) => [id, loadFamilyWords('en', id)] as const))('%s', (_, { stems, asks }) => {
  const all = [...Object.entries(stems).map(([key, list]) => [`stem ${key}`, list] as const), ...Object.entries(asks).map(([key, list]) => [`ask ${key}`, list] as const)];

  test('every stem and every asking has two wordings at least, and no two alike', () => {
    for (const [key, list] of all) {
      expect(list.length, key).toBeGreaterThanOrEqual(2);
      expect(new Set(list.map(usualOf)).size, key).toBe(list.length);
    }
  });

  test('all wordings of a stem or an asking have the same blanks, so that no given is lost', () => {
    for (const [key, [first, ...others]] of all) for (const other of others) expect(blanksOf(other), key).toEqual(blanksOf(first!));
  });

  test('every wording is whole sentences', () => {
    for (const [key, list] of all) for (const sentence of list) expect(sentence, key).toMatch(/^[A-Z].*[.?)]$/);
  });
});

test('no stem or asking is left over that no direction takes', () => {
  for (const family of families) {
    const { stems, asks } = loadFamilyWords('en', family.id);
    const taken = new Set<string>();
    const names = new Set<string>();
    for (const choice of arrangements(family)) {
      for (const { name } of directions(family, choice)) {
        const values = Object.values(choice);
        taken.add([...values.map((value) => `${name} ${value}`), name, ...values, 'any'].find((key) => stems[key])!);
        names.add(name);
      }
    }
    expect(new Set(Object.keys(stems)), family.id).toEqual(taken);
    // 'answer choice' is the asking of 'answer' where there are options.
    expect(new Set(Object.keys(asks).map((key) => key.replace(/ choice$/, ''))), family.id).toEqual(names);
  }
});

describe('questions in words', () => {
  const viva = loadFamilyWords('en', 'viva').verdicts!['answer']!;
  const topics = arrangements(familyNamed('viva')).map(({ topic }) => topic!);

  test('there are forty viva questions at least, each with a right answer and three others, all four different', () => {
    expect(topics.length).toBeGreaterThanOrEqual(40);
    expect(Object.keys(viva).sort()).toEqual(topics.flatMap((topic) => [topic, `${topic} a`, `${topic} b`, `${topic} c`]).sort());
    for (const topic of topics) expect(new Set([topic, `${topic} a`, `${topic} b`, `${topic} c`].map((key) => usualOf(viva[key]!))).size, topic).toBe(4);
    expect(new Set(topics.map((topic) => usualOf(viva[topic]!))).size).toBe(topics.length);
  });

  test('the right answer to a viva question is not known by its length', () => {
    const longest = topics.filter((topic) => ['a', 'b', 'c'].every((wrong) => viva[`${topic} ${wrong}`]!.length < viva[topic]!.length));
    expect(longest.length / topics.length).toBeLessThan(0.4);
  });

  test('there are thirty pairs of assertion and reason at least, each outcome with a fifth of them', () => {
    const outcomes = arrangements(familyNamed('assertion-reason')).map((choice) => directions(familyNamed('assertion-reason'), choice)[0]!.ask.steps[0]!.decide!);
    const right = outcomes.map(({ by }) => by({ value: () => NaN, rows: () => [] }));
    expect(right.length).toBeGreaterThanOrEqual(30);
    for (const verdict of outcomes[0]!.choices) expect(right.filter((one) => one === verdict).length, verdict).toBeGreaterThanOrEqual(right.length / 5);
  });
});
