import { describe, expect, test } from 'vitest';
import { loadFamilyWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { formula } from '../../generators/quantities/formula.ts';
import { type Direction, arrangements, directions } from '../../generators/questions/direction.ts';
import { drawGivens } from '../../generators/questions/draw.ts';
import { exactly } from '../../generators/questions/exact.ts';
import type { Family } from '../../generators/questions/family.ts';
import { halfUnit } from '../../generators/quantities/written.ts';
import { question } from '../../generators/questions/question.ts';
import { slipValues } from '../../generators/questions/sound.ts';
import { questionText, solutionText } from '../../generators/questions/text.ts';
import { questionView } from '../../generators/questions/view.ts';
import { streams } from '../../generators/random.ts';
import { solveNumerically, tellable } from './newton.ts';
import { secondVerdict, secondWay } from './second-way.ts';

/** Random questions a family, over all its arrangements and directions. */
const COUNT = 1000;

const shared = loadQuestionWords('en');

/** Every direction in every arrangement; made once, when first asked for. */
const all = (family: Family): Direction[] => arrangements(family).flatMap((choice) => directions(family, choice));

function instances(all: readonly Direction[]) {
  const each = Math.ceil(COUNT / all.length);
  return all.flatMap((direction, place) =>
    Array.from({ length: each }, (_, i) => {
      const readings = drawGivens(direction, streams('families').of(direction.family.id, place, i));
      return { direction, readings, values: exactly(direction.program, readings), worked: question(direction, readings) };
    }),
  );
}

/** Every check of these families. One file a share, so that workers check them side by side. */
export function checkFamilies(families: readonly Family[]): void {
  describe.each(families.map((family) => [family.id, family] as const))('%s', (id, family) => checkFamily(id, family));
}

function checkFamily(id: string, family: Family): void {
  let made: ReturnType<typeof instances> | undefined;
  /** Drawn when the first test needs them, so that a family tested alone does not wait for the others. */
  const drawn = () => (made ??= instances(all(family)));

  test('every answer, put back into the condition, satisfies it', () => {
    for (const { direction, values } of drawn()) {
      if (inWords(direction) && direction.body.condition.length === 0) continue;
      const gaps = direction.body.condition.flatMap((condition) => gapBetween(condition, values));
      expect(gaps.length, `no condition holds between the quantities of ${direction.name}`).toBeGreaterThan(0);
      expect(Math.max(...gaps), direction.name).toBeLessThan(1e-9);
    }
  });

  test(`the circuit, solved numerically, gives the same answers on ${COUNT} random questions`, () => {
    const equations = secondWay[id];
    const fixed = all(family).every((direction) => direction.givens.length === 0);
    expect(fixed || (equations ?? secondVerdict[id]), `no second way for ${id}`).toBeTruthy();
    for (const { direction, values, worked } of drawn()) {
      if (direction.givens.length === 0 && inWords(direction)) continue;
      const columns = Object.fromEntries(values);
      const unknowns = direction.ask.steps.filter((step) => !step.decide && direction.body.quantities[step.id]!.per === undefined).map((step) => step.id);
      const known = Object.fromEntries([...values].map(([name, column]) => [name, column[0]!]));
      if (direction.ask.steps.some(({ decide }) => decide)) expect(secondVerdict[id]!(known, direction.choice, columns)).toEqual(worked.verdicts);
      if (inWords(direction)) continue;
      const start = { ...known, ...Object.fromEntries(unknowns.map((name, i) => [name, known[name]! * (1.04 + 0.02 * i)])) };
      const told = tellable((v) => equations!(v, direction.choice, direction.name, columns), start);
      expect(told(start).length, `equations for ${direction.name}`).toBeGreaterThanOrEqual(unknowns.length);
      const found = solveNumerically(told, start, unknowns);
      for (const name of unknowns) expect(Math.abs(found[name]! / known[name]! - 1), `${direction.name}: ${name}`).toBeLessThan(1e-6);
    }
  });

  test('no slip can be taken for the answer or for another slip', () => {
    for (const { direction, readings, values, worked: { answers } } of drawn()) {
      const slips = slipValues(direction, readings, values);
      const right = Object.fromEntries(answers.map((answer) => [answer.id, answer.exact]));
      const seen = [right, ...slips.map((slip) => ({ ...right, ...slip.answers }))].map((all) => Object.values(all).map((value) => Number(value).toPrecision(3)).join());
      expect(new Set(seen).size, `${direction.name}: ${seen.join(' | ')}`).toBe(seen.length);
    }
  });

  test('no slip comes to what cannot be: a negative resistance, or a null point off the wire', () => {
    for (const { direction, values, worked: { slips } } of drawn()) {
      for (const { answers } of slips) {
        for (const [name, value] of Object.entries(answers)) {
          const { unit, eitherWay } = direction.body.quantities[name]!;
          if (eitherWay) continue;
          expect(value * values.get(name)![0]!, `${direction.name}: ${name} = ${value}`).toBeGreaterThanOrEqual(0);
          if (unit === 'cm' && name.startsWith('l')) expect(value, `${direction.name}: ${name}`).toBeLessThan(values.get(id === 'bridge-wire' && name === 'l2' ? 'V' : 'W')?.[0] ?? 100);
        }
      }
    }
  });

  test('answers are of four figures at most or simple fractions, shown as they round, and accepted as they are shown', () => {
    for (const { direction, worked } of drawn()) {
      for (const { id: name, exact, shown, fraction, accept } of worked.answers) {
        const free = direction.body.quantities[name]!.neat === 'any';
        expect(free || fraction !== undefined || Math.abs(Number(exact.toPrecision(4)) - exact) <= 1e-9 * Math.abs(exact), `${direction.name}: ${name} = ${exact}`).toBe(true);
        expect(Math.abs(Number(shown) - exact), `${direction.name}: ${name} = ${exact} is shown as ${shown}`).toBeLessThanOrEqual(halfUnit(shown) * (1 + 1e-6));
        expect(Number(shown)).toBeGreaterThanOrEqual(accept[0]);
        expect(Number(shown)).toBeLessThanOrEqual(accept[1]);
      }
    }
  });

  test('every direction has words, in every wording, for all that it says', () => {
    const words = loadFamilyWords('en', id);
    for (const direction of all(family)) {
      const one = question(direction, drawGivens(direction, streams('words').of(id, direction.name)));
      const wordings = Math.max(...[...Object.values(words.stems), ...Object.values(words.asks)].map((list) => list.length));
      for (let i = 0; i < wordings; i++) {
        const view = questionView(one, words, shared, { stem: i, ask: i });
        const text = questionText(view);
        for (const { value } of view.givens) expect(text, direction.name).toContain(value.text);
        expect(solutionText(view, shared)).not.toMatch(/[{}\\]|undefined|NaN/);
      }
    }
  });
}

/** Whether all that is asked is answered in words. */
const inWords = ({ ask }: Direction) => ask.finds.every((id) => ask.steps.some((step) => step.id === id && step.decide));

/** How far the two sides of a condition are apart, as a part of the larger, one a row; none where it names what a direction has not. */
function gapBetween(condition: string, values: ReadonlyMap<string, readonly number[]>): number[] {
  const [left, right] = condition.split('=').map((side) => side.trim()) as [string, string];
  const names = [...new Set(condition.match(/[A-Za-z]\w*/g))].filter((name) => !['sqrt', 'pi'].includes(name));
  if (!names.every((name) => values.has(name))) return [];
  const rows = Math.max(...names.map((name) => values.get(name)!.length));
  return Array.from({ length: rows }, (_, row) => {
    const side = (text: string) => {
      const { names: own, value } = formula(text, new Set(names));
      return value(own.map((name) => values.get(name)![row] ?? values.get(name)![0]!));
    };
    const [a, b] = [side(left), side(right)];
    return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-30);
  });
}
