import type { Formula } from './formula.ts';
import { powerOf } from './interval.ts';
import type { Program } from './program.ts';
import type { Computed, Relation, Written } from './step.ts';
import { summaryMethods } from './summary.ts';
import { unit } from './unit.ts';
import { type Ties, round, shift } from './written.ts';

/** Readings and givens as they are printed: one value, or one a row. */
export type Readings = Record<string, Written | Written[]>;

/** A student's own values, by step and row; what is missing is worked out. */
export type Own = Record<string, (Written | undefined)[]>;

/** Every quantity of a sheet, one value a row (a scalar has one). */
export interface Values {
  /** As written on the key: each worked from the values written above it. */
  written: Map<string, Written[]>;
  /** The same chain without rounding between steps; after an own value it goes on from that. */
  exact: Map<string, number[]>;
}

/** Works all steps on the readings; a student's own value takes the place of a step's for all that follows. */
export function evaluate(program: Program, readings: Readings, ties: Ties, own: Own = {}): Values {
  const values: Values = { written: new Map(), exact: new Map() };
  for (const step of program.steps) {
    if (step.kind === 'verdict') continue;
    if (step.kind === 'influence') {
      values.exact.set(step.id, [0]);
      continue;
    }
    const mine = own[step.id] ?? [];
    if (step.kind === 'reading' || step.kind === 'given') {
      const written = [readings[step.id] ?? []].flat().map((reading, row) => mine[row] ?? reading);
      if (written.length === 0) throw new Error(`no reading ${step.id}`);
      put(values, step.id, written, written.map(Number));
      continue;
    }
    const exact = work(program, step, (id, row) => at(values.exact.get(id)!, row), values);
    const chained = work(program, step, (id, row) => Number(at(values.written.get(id)!, row)), values);
    put(
      values,
      step.id,
      chained.map((value, row) => mine[row] ?? round(value, step.digits, ties)),
      exact.map((value, row) => (mine[row] === undefined ? value : Number(mine[row]))),
    );
  }
  return values;
}

function put(values: Values, id: string, written: Written[], exact: number[]): void {
  values.written.set(id, written);
  values.exact.set(id, exact);
}

/** A scalar is the same in every row. */
export function at<T>(column: readonly T[], row: number): T {
  return (column.length === 1 ? column[0] : column[row])!;
}

/** How many rows a step has. */
export function rowsOf(program: Program, step: Computed, values: Values): number {
  if (!step.per) return 1;
  const column = program.steps.find((other) => (other.kind === 'reading' || other.kind === 'given') && other.per === step.per);
  if (!column) throw new Error(`${step.id}: table ${step.per} has no reading to count its rows by`);
  return values.written.get(column.id)!.length;
}

function work(program: Program, step: Computed, value: (id: string, row: number) => number, values: Values): number[] {
  if (step.kind === 'summary') {
    const columns = step.of.map((id) => values.exact.get(id)!.map((_, row) => value(id, row)));
    return [summaryMethods[step.by].value(columns)];
  }
  const { as } = program.compiled(step.id);
  return Array.from({ length: rowsOf(program, step, values) }, (_, row) => formulaValue(program, step, as, (id) => value(id, row)));
}

/** What a formula of a relation comes to, its own or that of a slip, on quantities in their own units. */
export function formulaValue(program: Program, relation: Relation, formula: Formula, value: (id: string) => number): number {
  return fromSi(relation, formula.value(formula.names.map((id) => toSi(program, relation, id, value(id)))));
}

/** A number times a power of ten; a negative power divides, which rounds only once. */
export function scale(value: number, tens: number): number {
  if (tens === 0) return value;
  return tens > 0 ? value * powerOf(10, tens) : value / powerOf(10, -tens);
}

/** The power of ten by which a relation takes a quantity: to SI units where it says so. */
export function tensInto(program: Program, relation: Relation, id: string): number {
  return relation.si ? unit(program.step(id).unit).tens : 0;
}

function toSi(program: Program, relation: Relation, id: string, value: number): number {
  return scale(value, tensInto(program, relation, id));
}

function fromSi(relation: Relation, value: number): number {
  return relation.si ? scale(value, -unit(relation.unit).tens) : value;
}

/** What a student puts into the formula: the written value, its decimal point moved where the relation works in SI units. */
export function writtenInto(program: Program, relation: Relation, id: string, written: Written): Written {
  return shift(written, tensInto(program, relation, id));
}
