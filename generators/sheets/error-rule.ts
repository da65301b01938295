import type { Expression } from '../quantities/expression.ts';
import type { Program } from '../quantities/program.ts';
import { type SpokenWords, fill, spokenNumber, spokenSubstituted } from '../quantities/spoken.ts';
import { at } from '../quantities/evaluate.ts';
import { print } from '../quantities/print.ts';
import type { Relation, Written } from '../quantities/step.ts';
import { texNumber, texSubstituted } from '../quantities/tex.ts';
import { round } from '../quantities/written.ts';
import type { Worked } from './worked.ts';
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

/** The rule's right side with numbers put in: those of the first row for a mean, whose own error is the mean of the rows'. */
export function errorNumbers(worked: Worked, id: string, words: SpokenWords): Line {
  const { program, values } = worked;
  const step = program.step(id);
  if (step.kind === 'summary') return errorNumbers(worked, step.of[0]!, words);
  const relation = step as Relation;
  const written = (name: string) => at(values.written.get(name)!, 0);
  const number = (text: Written): Line => ({ tex: texNumber(text).text, spoken: spokenNumber(text, words) });
  const terms = relativeTerms(withinRow(program, relation), exactNames(program)) ?? [];
  const sum = terms.map(({ times, off, over }) => {
    const above = number(round(off.reduce((total, name) => total + worked.worst(name), 0), { figures: 2 }, 'even'));
    const below: Line = { tex: print(over, texSubstituted(written)), spoken: print(over, spokenSubstituted(words, written)) };
    const fraction = ratio(above, below, words);
    return times === 1 ? fraction : { tex: `${times} \\times ${fraction.tex}`, spoken: fill(words.product, { left: times, right: fraction.spoken }) };
  }).reduce((left, right) => joined(left, right, words));
  const total = number(round(worked.worst(relation.id) / Math.abs(at(values.exact.get(relation.id)!, 0)), { figures: 2 }, 'even'));
  return { tex: `${sum.tex} = ${total.tex}`, spoken: fill(words.equals, { left: sum.spoken, right: total.spoken }) };
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
