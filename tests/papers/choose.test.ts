import { describe, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { type Demands, PARTS, markTable, unmet } from '../../generators/papers/demands.ts';
import type { Entry } from '../../generators/papers/entry.ts';
import { FORMS } from '../../generators/papers/forms.ts';
import { selection } from '../../generators/papers/paper.ts';
import { pool } from '../../generators/papers/pool.ts';
import { reachable } from '../../generators/papers/reach.ts';
import { type Random, streams } from '../../generators/random.ts';

const COUNT = 10_000;
const all = pool('sample');

/** Marks that some paper has, so that they can be met: by some parts, and of each by some names. */
function demandsOf(draw: Random): Demands {
  const questions = new Set<string>();
  const paper = draw.shuffle(all).filter(({ question }) => !questions.has(question) && questions.add(question)).slice(0, draw.integer(2, 16));
  const table = markTable(paper);
  const some = (part: Record<string, number>) => Object.fromEntries(Object.entries(part).filter(() => draw.uniform() < 0.7));
  const parts = PARTS.filter(() => draw.uniform() < 0.7).map((part) => [part, some(table[part])] as const);
  return { total: table.total, ...Object.fromEntries(parts) };
}

const choose = (demands: Demands, seed: string, set: readonly Entry[] = []) => selection({ set, pool: all, demands }, streams(seed));

test(`${COUNT} random papers, to marks that can be had, have these marks to the last, and no question twice`, () => {
  const draw = streams('demands').of();
  for (let i = 0; i < COUNT; i++) {
    const demands = demandsOf(draw);
    const entries = choose(demands, `paper ${i}`);
    const missed = unmet(markTable(entries), demands);
    if (missed.length > 0) expect(missed, JSON.stringify(demands)).toEqual([]);
    if (new Set(entries.map(({ question }) => question)).size !== entries.length) expect.fail(`a question twice for ${JSON.stringify(demands)}`);
  }
}, 300_000);

test('marks at random are met to the last, or refused with the part', () => {
  const draw = streams('random').of();
  const random = (names: readonly string[], most: number) => Object.fromEntries(draw.shuffle(names).slice(0, draw.integer(1, 3)).map((name) => [name, draw.integer(0, most)]));
  const seen = { met: 0, refused: 0 };
  for (let i = 0; i < 300; i++) {
    const demands: Demands = { total: draw.integer(5, 60), levels: random(['1', '2', '3'], 20), forms: random(FORMS, 15) };
    try {
      expect(unmet(markTable(choose(demands, `random ${i}`)), demands)).toEqual([]);
      seen.met++;
    } catch (error) {
      expect(error).toBeInstanceOf(UserMistake);
      expect((error as UserMistake).message).toMatch(/^marks\.(total|levels|forms|topics)/);
      seen.refused++;
    }
  }
  expect(seen.met).toBeGreaterThan(50);
  expect(seen.refused).toBeGreaterThan(50);
});

test('families are not repeated while others would do', () => {
  const entries = choose({ total: 24, forms: { numeric: 24 } }, 'variety');
  const families = entries.map(({ parts }) => parts[0]!.family.id);
  expect(families.length).toBeGreaterThan(4);
  expect(new Set(families).size).toBe(families.length);
});

test('questions that the setter names stay, and the others make up the rest', () => {
  const set = [all.find(({ question, form }) => question === 'series both' && form === 'structured')!];
  const entries = choose({ total: 10, forms: { structured: set[0]!.marks } }, 'rest', set);
  expect(entries).toContain(set[0]);
  expect(markTable(entries)).toMatchObject({ total: 10, forms: { structured: set[0]!.marks } });
});

describe('a demand that cannot be met says which part, and why', () => {
  const series = all.find(({ question, form }) => question === 'series both' && form === 'structured')!;
  test.each<[Demands, readonly Entry[], string]>([
    [{ total: 10, topics: { wires: 11 } }, [], 'marks.topics: they come to 11, but total is 10; make them agree'],
    [{ topics: { wires: 4 }, levels: { 1: 5 } }, [], 'marks.levels: they come to 5, but the marks of another part come to 4'],
    [{ total: 10, forms: { case: 1 } }, [], 'marks.forms.case: 1 are asked, and its questions cannot add up to that; ask for 0 or 6'],
    [{ total: 500, forms: { figure: 450 } }, [], 'marks.forms.figure: 450 are asked, and all its questions together come to'],
    [{ total: 4, topics: { temperature: 4 }, levels: { 1: 4 } }, [], 'does not go with the other demands; they can be met with'],
    [{ total: 3, levels: { 3: 3 }, forms: { assertion: 3 } }, [], 'marks.levels.3: 3 are asked, which does not go with the other demands; they can be met with 0'],
    [{ total: 20, forms: { structured: 1 } }, [series], 'marks.forms.structured: 1 are asked, but the questions that the paper names come to 4'],
  ])('%j', (demands, set, message) => {
    expect(() => choose(demands, 'bad', set)).toThrow(UserMistake);
    expect(() => choose(demands, 'bad', set)).toThrow(message);
  });
});

test('what can be made up of questions is what trying all of them finds', () => {
  const draw = streams('reach').of();
  for (let i = 0; i < 200; i++) {
    const marks = Array.from({ length: draw.integer(0, 8) }, () => draw.integer(1, 7));
    const counts: number[] = [];
    for (const one of marks) counts[one] = (counts[one] ?? 0) + 1;
    const sums = new Set(Array.from({ length: 2 ** marks.length }, (_, bits) => marks.reduce((sum, one, place) => sum + ((bits >> place) & 1) * one, 0)));
    expect([...reachable(30, counts).entries()].flatMap(([sum, can]) => (can === 1 ? [sum] : []))).toEqual([...sums].filter((sum) => sum <= 30).sort((a, b) => a - b));
  }
});
