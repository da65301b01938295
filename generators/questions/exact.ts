import { type Readings, at, scale, tensInto } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Relation, Summary } from '../quantities/step.ts';
import { summaryMethods } from '../quantities/summary.ts';
import { unit } from '../quantities/unit.ts';

/** Unrounded values, one a row; a scalar has one. */
export type Exact = ReadonlyMap<string, readonly number[]>;

/**
 * Every quantity without any rounding, in its own unit: fast, and at peace with numbers that are none, which only a
 * set of givens has that is not sound. `own` values take the place of a line's and are gone on from.
 */
export function exactly(program: Program, readings: Readings, own: Exact = new Map()): Exact {
  const values = new Map<string, readonly number[]>();
  for (const step of program.steps) {
    if (step.kind === 'verdict') continue;
    if (step.kind === 'relation' || step.kind === 'summary') values.set(step.id, own.get(step.id) ?? worked(program, step, values));
    else values.set(step.id, [readings[step.id] ?? []].flat().map(Number));
  }
  return values;
}

/** What a slip makes of its line. */
export function slipped(program: Program, id: string, slip: string, values: Exact): readonly number[] {
  const step = program.step(id);
  if (step.kind !== 'relation') throw new Error(`${id} is no relation, so it has no slips`);
  return worked(program, step, values, slip);
}

function worked(program: Program, step: Relation | Summary, values: Exact, slip?: string): readonly number[] {
  const column = (id: string) => values.get(id)!;
  if (step.kind === 'summary') return [summaryMethods[step.by].value(step.of.map((id) => [...column(id)]))];
  const compiled = program.compiled(step.id);
  const formula = slip === undefined ? compiled.as : compiled.slips.find(({ id }) => id === slip)!.as;
  const rows = step.per === undefined ? 1 : Math.max(...formula.names.map((id) => column(id).length));
  const out = step.si ? -unit(step.unit).tens : 0;
  return Array.from({ length: rows }, (_, row) =>
    scale(formula.value(formula.names.map((id) => scale(at(column(id), row), tensInto(program, step, id)))), out),
  );
}
