import { formula } from '../../quantities/formula.ts';
import type { Direction } from '../../questions/direction.ts';
import { formulaSource, formulasOfPrograms } from '../ready-formulas.ts';

/** The formulas of a family's directions, those of its slips, bounds and conditions among them, as the source of an object for `provideFormulas`. */
export function questionFormulas(all: readonly Direction[]): string {
  const bounds = all.flatMap(({ body }) => [...Object.values(body.holds ?? {}), ...Object.values(body.quantities).flatMap(({ between = ['0', undefined] }) => between.filter((bound) => bound !== undefined))]);
  const read = [...new Set(bounds)].map((text) => formula(text, new Set(text.match(/[A-Za-z]\w*/g))));
  return formulaSource([...formulasOfPrograms(all.map(({ program }) => program)), ...read]);
}
