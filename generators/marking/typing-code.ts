import { tensInto } from '../quantities/evaluate.ts';
import { numberCode } from '../quantities/code.ts';
import { Hold, print } from '../quantities/print.ts';
import type { Program } from '../quantities/program.ts';
import type { Computed } from '../quantities/step.ts';
import { unit } from '../quantities/unit.ts';

/**
 * The steps as plain JavaScript for the page that answers are typed into: the body of a function (read, put, mean, line,
 * power) that works out every step in order. `read(id, row, tens)` gives a value, `put(id, table, work)` keeps one a row.
 */
export function chainCode(program: Program): string {
  return program.steps
    .flatMap((step) => (step.kind === 'relation' || step.kind === 'summary' ? [`put(${quoted(step.id)}, ${quoted(step.per ?? '')}, function (row) { return ${valueCode(program, step)}; });`] : []))
    .join('\n');
}

const quoted = (text: string) => JSON.stringify(text);

function valueCode(program: Program, step: Computed): string {
  if (step.kind === 'summary') return step.by === 'mean' ? `mean(${quoted(step.of[0]!)})` : `line(${step.of.map(quoted).join(', ')})[${quoted(step.by)}]`;
  const name = (id: string) => ({ text: `read(${quoted(id)}, row, ${tensInto(program, step, id)})`, hold: Hold.atom });
  const code = print(program.compiled(step.id).as.expression, { ...numberCode, name });
  return step.si ? `(${code}) / 1e${unit(step.unit).tens}` : code;
}
