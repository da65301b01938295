import { scale, tensInto } from '../quantities/evaluate.ts';
import type { Expression } from '../quantities/expression.ts';
import type { Formula } from '../quantities/formula.ts';
import { byFourFigureTables } from '../quantities/four-figure.ts';
import { point } from '../quantities/interval.ts';
import type { Program } from '../quantities/program.ts';
import { roundings } from '../quantities/roundings.ts';
import type { Digits, Interval, Relation } from '../quantities/step.ts';
import { expand } from '../quantities/textbook.ts';
import { unit } from '../quantities/unit.ts';

/** What schools put for π at its least and at its greatest. */
const PI = ['3.14', '22/7'] as const;

/** Something that honest work may choose on the way to an answer. */
export type Choice =
  /** A quantity that rounding leaves a choice of, in its own unit. */
  | { is: 'input'; id: string; value: number }
  /** A line in between, of another route than the formula's own; in coherent units where the relation is. */
  | { is: 'between'; expression: Expression; digits: Digits; value: number }
  | { is: 'pi'; value: (typeof PI)[number] }
  | { is: 'tables' }
  /** All rows of a column at one end. */
  | { is: 'each'; id: string; end: 'lowest' | 'highest' }
  /** The best-fit line, and how far from it a line by eye may lie. */
  | { is: 'best line'; value: number }
  | { is: 'by eye'; end: 'lowest' | 'highest'; value: number };

/** Choices, and what the formula comes to with them before it is rounded. */
export interface Way {
  choices: Choice[];
  value: number;
}

/** Every corner of what a relation may be worked from: inputs at either end, each route with its lines rounded either way, π at either end. */
export function waysTo(program: Program, relation: Relation, taken: (id: string) => Interval, tables: boolean): Way[] {
  const { as, routes } = program.compiled(relation.id);
  const open = as.names.filter((id) => wide(taken(id)));
  const out = relation.si ? -unit(relation.unit).tens : 0;
  return corners(open.map(taken)).flatMap((corner) => {
    const inputs = open.map((id, i): Choice => ({ is: 'input', id, value: corner[i]! }));
    const chosen = new Map(open.map((id, i) => [id, corner[i]!]));
    const value = (id: string) => scale(chosen.get(id) ?? taken(id)[0], tensInto(program, relation, id));
    return [...ends(as, value, tables), ...routes.flatMap((route) => along(route, value, tables))].map((way) => ({ choices: [...inputs, ...way.choices], value: scale(way.value, out) }));
  });
}

interface Route {
  via: readonly { id: string; as: Formula; digits: Digits }[];
  as: Formula;
}

/** A route's lines one after the other, each rounded down and up. */
function along({ via: [line, ...rest], as }: Route, value: (id: string) => number, tables: boolean, lines = new Map<string, Expression>()): Way[] {
  if (line === undefined) return ends(as, value, tables);
  const [least, greatest] = ends(line.as, value, tables) as [Way, Way];
  const range = roundings([least.value, greatest.value], line.digits);
  const expression = expand(line.as.expression, (id) => lines.get(id));
  const known = new Map([...lines, [line.id, expression]]);
  // Where both round to the same, π does not count.
  const reached = wide(range) ? [least, greatest] : [{ ...least, choices: [] }];
  return reached.flatMap(({ choices }, end) => {
    const rounded = range[end]!;
    const onward = along({ via: rest, as }, (id) => (id === line.id ? rounded : value(id)), tables, known);
    return onward.map((way): Way => ({ ...way, choices: [...choices, { is: 'between', expression, digits: line.digits, value: rounded }, ...way.choices] }));
  });
}

/** What a formula comes to on these values, at its least and at its greatest. */
function ends(formula: Formula, value: (id: string) => number, tables: boolean): Way[] {
  const plain = formula.range(formula.names.map((id) => point(value(id))));
  const range = tables ? byFourFigureTables(plain, formula.expression) : plain;
  const looked: Choice[] = wide(range) && range[0] !== plain[0] ? [{ is: 'tables' }] : [];
  const put = (end: 0 | 1): Choice[] => (wide(plain) ? [{ is: 'pi', value: PI[plain[0] < 0 ? 1 - end : end]! }] : []);
  return [0, 1].map((end) => ({ choices: [...put(end as 0 | 1), ...looked], value: range[end]! }));
}

/** Whether rounding leaves a choice. */
export const wide = ([low, high]: Interval) => high - low > 1e-12 * Math.abs(high);

function corners(ranges: readonly Interval[]): number[][] {
  return ranges.reduce<number[][]>((all, [low, high]) => all.flatMap((one) => [[...one, low], [...one, high]]), [[]]);
}
