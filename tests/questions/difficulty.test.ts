import { describe, expect, test } from 'vitest';
import { arrangements, directions } from '../../generators/questions/direction.ts';
import type { Ask } from '../../generators/questions/family.ts';
import { families, familyNamed } from '../../generators/questions/index.ts';
import { difficulty } from '../../generators/questions/question.ts';

/** A direction of so many lines and answers. */
const asking = (steps: number, unknowns: number, algebra: Ask['algebra']) => ({
  ask: { algebra, finds: Array.from({ length: unknowns }, (_, i) => `x${i}`), steps: Array.from({ length: steps }, (_, i) => ({ id: `y${i}`, as: '1' })) },
});

test.each([
  ['a short way of putting numbers in is easy', 2, 2, 1, 1],
  ['a longer one is middling', 3, 2, 1, 2],
  ['it is never hard, however long', 6, 3, 1, 2],
  ['one formula to be rearranged is middling', 1, 1, 2, 2],
  ['so is a way of six lines and answers', 4, 2, 2, 2],
  ['from seven on it is hard', 4, 3, 2, 3],
  ['simultaneous equations are hard, however short', 1, 1, 3, 3],
] as const)('%s', (_, steps, unknowns, algebra, level) => expect(difficulty(asking(steps, unknowns, algebra))).toEqual({ steps, unknowns, algebra, level }));

/** What a teacher would call these; common practice, no source. */
const ANCHORS = [
  ['balance', 'right', 1],
  ['balance', 'null', 1],
  ['interchange', 'mirror', 1],
  ['wheatstone', 'fourth', 1],
  ['resistivity', 'resistance', 1],
  ['screw-gauge', 'known', 1],
  ['interchange', 'right', 2],
  ['scaling', 'null', 2],
  ['shunt', 'resistor', 2],
  ['end-corrections', 'right', 2],
  ['resistivity-bridge', 'resistivity', 2],
  ['carey-foster', 'unknown', 2],
  ['currents', 'left', 2],
  ['error-of-x', 'error', 2],
  ['diameter-report', 'report', 2],
  ['shunt', 'both', 3],
  ['combination', 'each', 3],
  ['end-corrections-found', 'ends', 3],
  ['tapered', 'null', 3],
  ['off-balance', 'current', 3],
] as const;

describe('questions that teachers know are of the level that teachers give them', () => {
  test.each(ANCHORS)('%s, %s: %i', (id, name, level) => {
    const found = arrangements(familyNamed(id)).flatMap((choice) => directions(familyNamed(id), choice)).find((one) => one.name === name);
    expect(difficulty(found!).level).toBe(level);
  });
});

test('a direction is as hard in one arrangement as in another', () => {
  for (const family of families) {
    const levels = new Map<string, number>();
    for (const direction of arrangements(family).flatMap((choice) => directions(family, choice))) {
      const { level } = difficulty(direction);
      expect(levels.get(direction.name) ?? level, `${family.id}, ${direction.name}`).toBe(level);
      levels.set(direction.name, level);
    }
  }
});

test('no level is scarce: each has a tenth of all directions at least', () => {
  const all = families.flatMap((family) => directions(family).map((one) => difficulty(one).level));
  for (const level of [1, 2, 3]) expect(all.filter((one) => one === level).length / all.length, `level ${level}`).toBeGreaterThan(0.1);
});
