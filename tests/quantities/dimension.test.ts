import { describe, expect, test } from 'vitest';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { program } from '../../generators/quantities/program.ts';
import type { Relation, Step } from '../../generators/quantities/step.ts';
import { stepsOf, variantName, variants } from './practical.ts';

/** Numbers without meaning, none of them 0 or 1, so that no unit can hide behind them. */
const argsOf = (steps: Step[]): Record<string, number> => Object.fromEntries(steps.map(({ id }, i) => [id, 0.61 + 0.37 * i]));

const relations = (steps: Step[]) => steps.filter((step) => step.kind === 'relation');

/** The faults of all relations once one of them is changed. */
function faultsWith(steps: Step[], id: string, change: Partial<Relation>): string[] {
  const changed = steps.map((step) => (step.id === id ? ({ ...step, ...change } as Step) : step));
  const checked = program(changed);
  return relations(changed).flatMap((relation) => dimensionFault(checked, relation, argsOf(steps)) ?? []);
}

describe.each(variants.map((variant) => ({ name: variantName(variant), steps: stepsOf(variant) })))('$name', ({ steps }) => {
  const checked = program(steps);

  test.each(relations(steps))('$id = $as fits its units', (relation) => {
    expect(dimensionFault(checked, relation, argsOf(steps))).toBeUndefined();
  });

  test.each(relations(steps).filter(({ model }) => model))('the model of $id fits its units', (relation) => {
    expect(faultsWith(steps, relation.id, { as: relation.model! })).toEqual([]);
  });
});

describe('a wrong relation is caught', () => {
  const steps = stepsOf({ known: 'left', zero: 'negative' });

  test.each([
    ['a unit left unconverted', 'rho', { si: undefined }, 'with units'],
    ['a power forgotten', 'rho', { as: 'pi * d * meanX / (4 * L)' }, 'rho'],
    ['a power too many', 'X', { as: 'R * r^2 / l' }, 'X'],
    ['a length added to a pure number', 'dObs', { as: 'msr + n' }, 'dObs'],
    ['a bare 100 in place of the wire', 'r', { as: '100 - l' }, 'r'],
    ['a factor forgotten', 'csr', { as: 'n' }, 'csr'],
    ['a result with a unit where a pure number is due', 'off', { as: '100 * (rho - rhoTable)' }, 'pure number'],
  ])('%s', (_, id, change, word) => {
    const faults = faultsWith(steps, id, change as Partial<Relation>);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(word);
  });

  test('a value that is no number is a fault, not a pass', () => {
    const e = relations(steps).find(({ id }) => id === 'e')!;
    expect(dimensionFault(program(steps), e, { ...argsOf(steps), n0: NaN })).toContain('NaN');
  });
});
