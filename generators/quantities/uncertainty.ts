import { type Values, at, rowsOf, scale, tensInto } from './evaluate.ts';
import type { Program } from './program.ts';
import type { Relation } from './step.ts';
import { t95 } from './student-t.ts';
import { summaryMethods } from './summary.ts';
import { unit } from './unit.ts';

/** How far a quantity may be off, in its own unit or as a fraction of its value. */
export type Limit = { absolute: number } | { fraction: number };

/** One thing that makes a result uncertain, and how much the result moves with it. */
export interface Contribution {
  /** A reading, an influence, or the scatter of a table's rows. */
  source: string;
  /** Standard uncertainty of the source, in the source's unit. */
  u: number;
  /** Its part of the result's standard uncertainty, in the result's unit, with sign. */
  part: number;
  /** Degrees of freedom; Infinity where the limit is taken as known. */
  freedom: number;
}

/** A standard uncertainty with its parts (JCGM 100:2008, 5.1 and G.4). */
export interface Budget {
  contributions: Contribution[];
  u: number;
  freedom: number;
  t: number;
  /** t · u: the half-width of the 95 % coverage interval. */
  expanded: number;
}

type Gradient = Map<string, number>;

interface Scatter {
  u: number;
  freedom: number;
  /** The influence that stands for the resolution of the rows. */
  resolution?: string | undefined;
}

export interface Sensitivities {
  of(id: string, row?: number): Gradient;
  scatters: Map<string, Scatter>;
}

const cellKey = (id: string, row: number, per?: string) => (per ? `${id}[${row}]` : id);

/** Forward gradients of every quantity, down to readings, influences and scatters, at the unrounded values. */
export function sensitivities(program: Program, values: Values): Sensitivities {
  const gradients = new Map<string, Gradient[]>();
  const scatters = new Map<string, Scatter>();
  for (const step of program.steps) {
    if (step.kind === 'verdict') continue;
    if (step.kind === 'given') gradients.set(step.id, values.exact.get(step.id)!.map(() => new Map()));
    else if (step.kind === 'reading' || step.kind === 'influence')
      gradients.set(step.id, values.exact.get(step.id)!.map((_, row) => new Map([[cellKey(step.id, row, step.per), 1]])));
    else if (step.kind === 'relation')
      gradients.set(
        step.id,
        Array.from({ length: rowsOf(program, step, values) }, (_, row) => relationGradient(program, step, row, values, gradients)),
      );
    else {
      const method = summaryMethods[step.by];
      const columns = step.of.map((id) => values.exact.get(id)!);
      const parts = method.gradient(columns).flatMap((column, c) => column.map((by, row) => [by, gradients.get(step.of[c]!)![row]!] as const));
      const own: Gradient = new Map();
      for (const { source, by, u } of method.scatter(columns)) {
        const key = `scatter of ${source} ${step.of.join(', ')}`;
        scatters.set(key, { u, freedom: columns[0]!.length - method.parameters, resolution: step.resolution });
        own.set(key, by);
      }
      gradients.set(step.id, [combine([...parts, [1, own]])]);
    }
  }
  return { of: (id, row = 0) => at(gradients.get(id)!, row), scatters };
}

function relationGradient(program: Program, relation: Relation, row: number, values: Values, gradients: Map<string, Gradient[]>): Gradient {
  const { model } = program.compiled(relation.id);
  const tens = model.names.map((id) => tensInto(program, relation, id));
  const args = model.names.map((id, i) => scale(at(values.exact.get(id)!, row), tens[i]!));
  const out = relation.si ? unit(relation.unit).tens : 0;
  return combine(model.gradient(args).map((by, i) => [scale(by, tens[i]! - out), at(gradients.get(model.names[i]!)!, row)]));
}

function combine(parts: (readonly [by: number, gradient: Gradient])[]): Gradient {
  const out: Gradient = new Map();
  for (const [by, gradient] of parts) for (const [key, value] of gradient) out.set(key, (out.get(key) ?? 0) + by * value);
  return out;
}

const sizeOf = (limit: Limit, value: number) => ('absolute' in limit ? limit.absolute : Math.abs(value) * limit.fraction);

/**
 * The maximum permissible error: the readings' limits, each times the size of its partial, all added.
 * School boards mean by it the worst-case error of the result.
 */
export function worstCase(gradient: Gradient, values: Values, limits: Record<string, Limit>): number {
  let sum = 0;
  for (const [key, by] of gradient) {
    const [id = '', row = '0'] = key.split(/[[\]]/);
    const limit = limits[id];
    if (limit) sum += Math.abs(by) * sizeOf(limit, at(values.exact.get(id)!, Number(row)));
  }
  return sum;
}

/**
 * The standard uncertainty of a scalar: scatter of the rows (type A), which already holds what varies from row
 * to row, and rectangular limits of single readings and influences (type B, a/√3), in quadrature. Resolution and
 * scatter of the same readings: the larger of the two, since each reading scatters by its rounding too
 * (ISO 14253-2, from memory).
 */
export function standardUncertainty(gradient: Gradient, scatters: Map<string, Scatter>, values: Values, halfWidths: Record<string, Limit>): Budget {
  const contributions: Contribution[] = [];
  const held = rowScatters(gradient, scatters);
  for (const [source, by] of gradient) {
    const scatter = scatters.get(source);
    const limit = halfWidths[source];
    if (scatter) contributions.push({ source, u: scatter.u, part: by * scatter.u, freedom: scatter.freedom });
    else if (limit) {
      const u = sizeOf(limit, values.exact.get(source)?.[0] ?? 0) / Math.sqrt(3);
      if (held.get(source)! >= u) continue;
      contributions.push({ source, u, part: by * u, freedom: Infinity });
    }
  }
  const u = Math.sqrt(contributions.reduce((sum, { part }) => sum + part * part, 0));
  const freedom = effectiveFreedom(u, contributions);
  const t = t95(freedom);
  return { contributions, u, freedom, t, expanded: t * u };
}

/** The standard deviation of the rows, by the influence that stands for their resolution. */
function rowScatters(gradient: Gradient, scatters: Map<string, Scatter>): Map<string, number> {
  const rows = [...scatters].filter(([source]) => gradient.has(source));
  return new Map(rows.flatMap(([, { u, freedom, resolution }]) => (resolution ? [[resolution, u * Math.sqrt(freedom + 1)]] : [])));
}

/** Welch–Satterthwaite (JCGM 100:2008, G.2b). Scatters about one line share their degrees of freedom and count as one. */
function effectiveFreedom(u: number, contributions: Contribution[]): number {
  const squares = new Map<string, { square: number; freedom: number }>();
  for (const { source, part, freedom } of contributions) {
    if (freedom === Infinity) continue;
    const group = source.replace(/^scatter of \w+/, '');
    squares.set(group, { square: (squares.get(group)?.square ?? 0) + part * part, freedom });
  }
  const sum = [...squares.values()].reduce((total, { square, freedom }) => total + (square * square) / freedom, 0);
  return sum === 0 ? Infinity : (u * u * u * u) / sum;
}
