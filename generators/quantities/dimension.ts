import type { Unit } from 'mathjs';
import { evaluate, unit as mathUnit } from './mathjs.ts';
import { scale, tensInto } from './evaluate.ts';
import type { Program } from './program.ts';
import type { Relation } from './step.ts';
import { unit } from './unit.ts';

/**
 * Works a relation twice, on mathjs quantities with units and by the plain function on bare numbers, and says
 * what is wrong where the two differ: a dimension that does not fit, or a unit that was not converted.
 */
export function dimensionFault(program: Program, relation: Relation, args: Record<string, number>): string | undefined {
  const { as } = program.compiled(relation.id);
  const scope = Object.fromEntries(as.names.map((id) => [id, withUnit(args[id]!, program.step(id).unit)]));
  const bare = as.value(as.names.map((id) => scale(args[id]!, tensInto(program, relation, id))));
  const plain = relation.si ? scale(bare, -unit(relation.unit).tens) : bare;
  try {
    const result = evaluate(relation.as, scope) as Unit | number;
    const number = inUnit(result, relation.unit);
    const same = Math.abs(number - plain) <= 1e-9 * Math.abs(plain);
    return same ? undefined : `${relation.id}: ${number} with units, ${plain} without`;
  } catch (error) {
    return `${relation.id}: ${(error as Error).message}`;
  }
}

/** A percentage stays the number that is written before its sign, as schools compute it. */
function withUnit(value: number, name: string): Unit | number {
  const { math } = unit(name);
  return math === '' ? value : mathUnit(value, math);
}

function inUnit(result: Unit | number, name: string): number {
  const { math } = unit(name);
  if (typeof result === 'number') {
    if (math === '') return result;
    throw new Error(`a pure number where ${name} is due`);
  }
  if (math === '') throw new Error(`${result.toString()} where a pure number is due`);
  return result.toNumber(math);
}
