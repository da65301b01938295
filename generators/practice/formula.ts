import * as I from '../quantities/interval.ts';
import type { Expression } from '../quantities/expression.ts';
import { type Formula, type FormulaFunctions, makeFormula } from '../quantities/made-formula.ts';

export type { Formula };

/** A formula that the build has read and turned into functions, since a page has no reader of formulas. */
export interface ReadyFormula {
  names: string[];
  expression: Expression;
  functions(power: typeof I.powerOf, intervals: typeof I): FormulaFunctions;
}

const formulas = new Map<string, Formula>();

/** Gives the page its formulas, by their text, before anything is worked. */
export function provideFormulas(ready: Readonly<Record<string, ReadyFormula>>): void {
  for (const [text, { names, expression, functions }] of Object.entries(ready)) formulas.set(text, makeFormula({ text, names, expression }, functions(I.powerOf, I)));
}

/** Stands in a page for `formula` of quantities/formula.ts: the same functions, compiled before. */
export function formula(text: string, _known?: ReadonlySet<string>): Formula {
  const found = formulas.get(text);
  if (!found) throw new Error(`the build has not made ready the formula ${text}`);
  return found;
}
