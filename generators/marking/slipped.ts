import { type Program, program } from '../quantities/program.ts';
import type { Computed, Relation, Slip, Step, Summary } from '../quantities/step.ts';

/** A slip of the catalogue, made at one step. */
export interface Made {
  at: string;
  slip: Slip;
}

const variants = new WeakMap<Program, Map<string, Program>>();

/** The same steps with slips in place of the right formulas, checked once for each program. */
export function slipped(right: Program, made: readonly Made[]): Program {
  if (made.length === 0) return right;
  const kept = variants.get(right) ?? new Map<string, Program>();
  variants.set(right, kept);
  const key = made.map(({ at, slip }) => `${at}\n${slip.id}`).join('\n\n');
  const there = kept.get(key) ?? program(right.steps.flatMap((step) => made.filter(({ at }) => at === step.id).reduce((so, { slip }) => withSlip(so, slip, right), [step])));
  kept.set(key, there);
  return there;
}

function withSlip(steps: Step[], slip: Slip, { step: named }: Program): Step[] {
  const step = steps.at(-1)!;
  if (step.kind === 'summary') return onMeans(step, slip, named);
  return [{ ...(step as Relation), as: slip.as, model: slip.as, routes: [], slips: [] }];
}

/** A summary's slip works once on the means of the columns that it names. */
function onMeans(summary: Summary, slip: Slip, named: Program['step']): Step[] {
  const means: Step[] = [];
  const as = slip.as.replace(/[A-Za-z_]\w*/g, (id) => {
    const column = columnNamed(id, named);
    if (!column) return id;
    const mean = `${id}_of_all`;
    if (!means.some((each) => each.id === mean)) means.push({ kind: 'summary', id: mean, tex: column.tex, unit: column.unit, by: 'mean', of: [id], digits: MEAN_DIGITS });
    return mean;
  });
  const { by: _, of: __, resolution: ___, slips: ____, ...rest } = summary;
  return [...means, { ...rest, kind: 'relation', as }];
}

/** What a mean of readings is rounded to by those who take means first; common practice, no source. */
const MEAN_DIGITS = { figures: 3 };

function columnNamed(id: string, named: Program['step']) {
  if (id === 'pi' || id === 'sqrt') return undefined;
  const step = named(id);
  return step.per ? step : undefined;
}

/** The slips listed for a step. */
export function slipsOf(step: Step): Slip[] {
  return step.kind === 'relation' || step.kind === 'summary' ? (step.slips ?? []) : [];
}

/** What a step is worked from. */
export function inputsOf(steps: Program, step: Computed): string[] {
  return step.kind === 'summary' ? step.of : steps.compiled(step.id).as.names;
}
