import { describe, expect, test } from 'vitest';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { type Direction, arrangements, directions } from '../../generators/questions/direction.ts';
import { drawGivens } from '../../generators/questions/draw.ts';
import { exactly } from '../../generators/questions/exact.ts';
import { families } from '../../generators/questions/index.ts';
import { streams } from '../../generators/random.ts';

/** Lines with a number that has a unit of its own, which the formula does not show. */
const WITH_A_UNIT: Readonly<Record<string, string>> = {
  'ring C': 'the full angle of 360 degrees',
  'ring r': 'the full angle of 360 degrees',
  'length-per-ohm y': 'the one ohm that the length is asked for',
  'temperature t2': '0 °C, from which the temperature is counted',
};

/** Sets of givens a direction, so that no fault hides behind a value of one. */
const SETS = 3;

/** What is wrong with the units of a direction's lines, by the line. */
function faultsOf(direction: Direction, set: number): Map<string, string> {
  const values = exactly(direction.program, drawGivens(direction, streams('dimensions').of(direction.family.id, direction.name, set)));
  const args = Object.fromEntries([...values].map(([id, [first]]) => [id, first!]));
  return new Map(
    direction.program.steps.flatMap((step) => {
      const fault = step.kind === 'relation' ? dimensionFault(direction.program, step, args) : undefined;
      return fault === undefined ? [] : [[`${direction.family.id} ${step.id}`, fault]];
    }),
  );
}

test.each(families.map((family) => [family.id, family] as const))('every formula of %s fits its units', (_, family) => {
  for (const direction of arrangements(family).flatMap((choice) => directions(family, choice))) {
    for (let set = 0; set < SETS; set++) {
      const faults = [...faultsOf(direction, set)].filter(([line]) => !(line in WITH_A_UNIT));
      expect(faults, direction.name).toEqual([]);
    }
  }
});

describe('a line is let off only while it needs to be', () => {
  test.each(Object.keys(WITH_A_UNIT))('%s', (line) => {
    const family = families.find(({ id }) => line.startsWith(`${id} `))!;
    const lines = directions(family).flatMap((direction) => [...faultsOf(direction, 0).keys()]);
    expect(lines).toContain(line);
  });
});
