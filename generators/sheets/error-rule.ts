import type { Expression } from '../quantities/expression.ts';
import type { Program } from '../quantities/program.ts';
import { type SpokenWords, fill } from '../quantities/spoken.ts';
import type { Relation } from '../quantities/step.ts';
import { type RelativeTerm, expand, relativeTerms } from '../quantities/textbook.ts';
import { type Line, expressionLine, symbolLine } from '../quantities/working.ts';

/**
 * The textbook rule for a result's largest relative error, 'ΔX/X = ΔR/R + Δl/l + Δl/(100 − l)'; for a mean, that of
 * its rows. Nothing where the form of the formula allows no such rule.
 */
export function errorRule(program: Program, id: string, words: SpokenWords): Line | undefined {
  const step = program.step(id);
  if (step.kind === 'summary') return step.by === 'mean' ? errorRule(program, step.of[0]!, words) : undefined;
  if (step.kind !== 'relation') return undefined;
  const terms = relativeTerms(withinRow(program, step), exactNames(program));
  if (!terms) return undefined;
  const left = ratio(delta(symbolLine(program, id, words), words), symbolLine(program, id, words), words);
  const right = terms.map((term) => termLine(program, term, words)).reduce((sum, term) => joined(sum, term, words));
  return { tex: `${left.tex} = ${right.tex}`, spoken: fill(words.equals, { left: left.spoken, right: right.spoken }) };
}

/** The formula with the columns of its own table traced back to what was read: 100 − l, not a number of its own. */
function withinRow(program: Program, relation: Relation): Expression {
  const own = (id: string) => {
    const step = program.step(id);
    return step.kind === 'relation' && step.per && step.per === relation.per ? program.compiled(id).as.expression : undefined;
  };
  return expand(program.compiled(relation.id).as.expression, own);
}

function exactNames(program: Program): Set<string> {
  return new Set(program.steps.filter(({ kind }) => kind === 'given' || kind === 'influence').map(({ id }) => id));
}

function termLine(program: Program, { times, off, over }: RelativeTerm, words: SpokenWords): Line {
  const above = off.map((id) => delta(symbolLine(program, id, words), words)).reduce((sum, one) => joined(sum, one, words));
  const fraction = ratio(above, expressionLine(program, over, words), words);
  if (times === 1) return fraction;
  return { tex: `${times}\\,${fraction.tex}`, spoken: fill(words.product, { left: times, right: fraction.spoken }) };
}

const delta = ({ tex, spoken }: Line, words: SpokenWords): Line => ({ tex: `\\Delta ${tex}`, spoken: fill(words.delta, { of: spoken }) });

const ratio = (above: Line, below: Line, words: SpokenWords): Line => ({
  tex: `\\frac{${above.tex}}{${below.tex}}`,
  spoken: fill(words.quotient, { left: above.spoken, right: below.spoken }),
});

const joined = (left: Line, right: Line, words: SpokenWords): Line => ({
  tex: `${left.tex} + ${right.tex}`,
  spoken: fill(words.sum, { left: left.spoken, right: right.spoken }),
});
