import { slipped, slipsOf } from '../marking/slipped.ts';
import { formulaCode } from '../quantities/formula-code.ts';
import { formula } from '../quantities/formula.ts';
import type { Formula } from '../quantities/made-formula.ts';
import type { Program } from '../quantities/program.ts';

/** The formulas of programs, with those of every slip and route, as the source of an object for `provideFormulas`. */
export function readyFormulas(programs: readonly Program[]): string {
  return formulaSource(formulasOfPrograms(programs));
}

/** Every formula that working and judging by these programs needs. */
export function formulasOfPrograms(programs: readonly Program[]): Formula[] {
  return programs.flatMap((one) => [one, ...withEachSlip(one)].flatMap(formulasOf));
}

/** Formulas, each once, as the source of an object for `provideFormulas`. */
export function formulaSource(formulas: readonly Formula[]): string {
  const found = new Map(formulas.map((one) => [one.text, one]));
  const entries = [...found.values()].map(({ text, names, expression }) => {
    const functions = `(power,I)=>(${formulaCode(expression, names)})`;
    return `${JSON.stringify(text)}:{names:${JSON.stringify(names)},expression:${JSON.stringify(expression)},functions:${functions}}`;
  });
  return `{${entries.join(',\n')}}`;
}

function withEachSlip(program: Program): Program[] {
  return program.steps.flatMap((step) => slipsOf(step).map((slip) => slipped(program, [{ at: step.id, slip }])));
}

function formulasOf({ steps, compiled }: Program): Formula[] {
  const known = new Set(steps.map(({ id }) => id));
  return steps.flatMap((step) => {
    // A summary's slip is read as it stands when the steps are checked, and made on the means when it is tried.
    if (step.kind === 'summary') return (step.slips ?? []).map((slip) => formula(slip.as, known));
    if (step.kind !== 'relation') return [];
    const { as, model, routes, slips } = compiled(step.id);
    return [as, model, ...routes.flatMap((route) => [...route.via.map((line) => line.as), route.as]), ...slips.map((slip) => slip.as)];
  });
}
