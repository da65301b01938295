import { type Own, type Readings, at, scale, tensInto } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Computed } from '../quantities/step.ts';
import { summaryMethods } from '../quantities/summary.ts';
import { unit } from '../quantities/unit.ts';
import { rowsIn } from './rows.ts';
import { inputsOf } from './slipped.ts';

/** Every value of a sheet unrounded, one a row. */
export type Chain = Map<string, number[]>;

/**
 * What a step comes to without any rounding, with a student's own values in place of those before it: quick enough to try a hundred
 * slips on. The same as `evaluate` gives as exact.
 */
export function chainTo(program: Program, id: string, readings: Readings, own: Own): Chain {
  const chain: Chain = new Map();
  for (const step of lineage(program, id)) {
    // What the step itself comes to is asked, whatever was written for it.
    const mine = step.id === id ? undefined : own[step.id];
    const values = 'read' in step ? [readings[step.id]!].flat().map(Number) : worked(program, step, chain, readings);
    chain.set(step.id, mine ? values.map((value, row) => (mine[row] === undefined ? value : Number(mine[row]))) : values);
  }
  return chain;
}

type Read = { id: string; read: true };

const lineages = new WeakMap<Program, Map<string, (Computed | Read)[]>>();

/** The steps that a value hangs on, in their order, itself last. */
function lineage(program: Program, id: string): (Computed | Read)[] {
  const kept = lineages.get(program) ?? new Map<string, (Computed | Read)[]>();
  lineages.set(program, kept);
  const there = kept.get(id) ?? needed(program, id);
  kept.set(id, there);
  return there;
}

function needed(program: Program, id: string): (Computed | Read)[] {
  const wanted = new Set([id]);
  const steps: (Computed | Read)[] = [];
  for (const step of program.steps.toReversed()) {
    if (!wanted.has(step.id) || step.kind === 'verdict' || step.kind === 'influence') continue;
    if (step.kind === 'relation' || step.kind === 'summary') for (const input of inputsOf(program, step)) wanted.add(input);
    steps.push(step.kind === 'relation' || step.kind === 'summary' ? step : { id: step.id, read: true });
  }
  return steps.reverse();
}

function worked(program: Program, step: Computed, chain: Chain, readings: Readings): number[] {
  if (step.kind === 'summary') return [summaryMethods[step.by].value(step.of.map((id) => chain.get(id)!))];
  const { as } = program.compiled(step.id);
  const columns = as.names.map((id) => chain.get(id)!);
  const tens = as.names.map((id) => tensInto(program, step, id));
  const out = step.si ? -unit(step.unit).tens : 0;
  return Array.from({ length: step.per ? rowsIn(program, step.per, readings) : 1 }, (_, row) => scale(as.value(columns.map((column, i) => scale(at(column, row), tens[i]!))), out));
}

/** A step and those before it that it is worked from and of which some value is not a student's own. */
export function blankBefore(program: Program, id: string, isOwn: (id: string) => boolean): string[] {
  const step = program.step(id);
  if (step.kind !== 'relation' && step.kind !== 'summary') return [];
  return [...new Set([id, ...inputsOf(program, step).flatMap((input) => (isOwn(input) ? [] : blankBefore(program, input, isOwn)))])];
}
