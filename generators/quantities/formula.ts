import { type Expression, namesIn, readExpression } from './expression.ts';
import { formulaCode } from './formula-code.ts';
import * as I from './interval.ts';
import { type Formula, type FormulaFunctions, makeFormula } from './made-formula.ts';

export type { Formula };

const formulas = new Map<string, Formula>();

/** Reads and compiles an expression once; `known` are the names that it may use. */
export function formula(text: string, known: ReadonlySet<string>): Formula {
  const expression = readExpression(text, known);
  const kept = formulas.get(text);
  if (kept) return kept;
  const made = compile(text, expression);
  formulas.set(text, made);
  return made;
}

function compile(text: string, expression: Expression): Formula {
  const names = namesIn(expression);
  const make = new Function('power', 'I', `return ${formulaCode(expression, names)}`) as (power: typeof I.powerOf, intervals: typeof I) => FormulaFunctions;
  return makeFormula({ text, expression, names }, make(I.powerOf, I));
}
