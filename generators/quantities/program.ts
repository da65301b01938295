import { type Formula, formula } from './formula.ts';
import type { Relation, Step, Summary, Verdict } from './step.ts';
import { summaryMethods } from './summary.ts';

/** A step that has a value. */
type Quantity = Exclude<Step, Verdict>;

/** A relation's expressions, compiled. */
export interface Compiled {
  as: Formula;
  /** With its influences; the same as `as` where it has none. */
  model: Formula;
  routes: { id: string; via: { id: string; as: Formula; digits: Relation['digits'] }[]; as: Formula }[];
  slips: { id: string; as: Formula }[];
}

/** Steps that have been checked against each other, and are ready to be worked. */
export interface Program {
  steps: Step[];
  step(id: string): Quantity;
  compiled(id: string): Compiled;
}

/**
 * Checks that every step names only what stands above it, that ids are unique and that tables are
 * one level deep (a row sees its own row and the sheet's scalars; only a summary sees a whole column).
 */
export function program(steps: Step[]): Program {
  const quantities = new Map<string, Quantity>();
  const compiled = new Map<string, Compiled>();
  const ids = new Set<string>();
  for (const step of steps) {
    if (ids.has(step.id)) throw new Error(`two steps are called ${step.id}`);
    ids.add(step.id);
    if (step.kind === 'verdict') continue;
    const scope = [...quantities.values()];
    if (step.kind === 'relation') compiled.set(step.id, compileRelation(step, namesSeenFrom(step.per, scope)));
    if (step.kind === 'summary') checkSummary(step, scope);
    quantities.set(step.id, step);
  }
  return {
    steps,
    step: (id) => get(quantities, id),
    compiled: (id) => get(compiled, id),
  };
}

function get<T>(map: Map<string, T>, id: string): T {
  const found = map.get(id);
  if (found === undefined) throw new Error(`no step is called ${id}`);
  return found;
}

function compileRelation(relation: Relation, known: ReadonlySet<string>): Compiled {
  const as = formula(relation.as, known);
  return {
    as,
    model: formula(relation.model ?? relation.as, known),
    routes: (relation.routes ?? []).map((route) => {
      const seen = new Set(known);
      const via = route.via.map((line) => {
        const made = { ...line, as: formula(line.as, seen) };
        seen.add(line.id);
        return made;
      });
      return { id: route.id, via, as: formula(route.as, seen) };
    }),
    slips: (relation.slips ?? []).map((slip) => ({ id: slip.id, as: formula(slip.as, known) })),
  };
}

function checkSummary(summary: Summary, scope: Quantity[]): void {
  const { columns } = summaryMethods[summary.by];
  if (summary.of.length !== columns) throw new Error(`${summary.id}: a ${summary.by} is taken of ${columns} columns, not of ${summary.of.length}`);
  const tables = summary.of.map((id) => scope.find((q) => q.id === id)?.per);
  const [table] = tables;
  if (!table || tables.some((other) => other !== table)) throw new Error(`${summary.id} must stand below columns of one table`);
  const known = namesSeenFrom(table, scope);
  for (const slip of summary.slips ?? []) formula(slip.as, known);
}

/** A row sees its own row and the sheet's scalars. */
function namesSeenFrom(table: string | undefined, scope: Quantity[]): Set<string> {
  return new Set(scope.filter((q) => !q.per || q.per === table).map((q) => q.id));
}
