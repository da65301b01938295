import { derivative } from 'mathjs';
import { type Expression, readExpression } from './expression.ts';
import { numberCode } from './code.ts';
import { print } from './print.ts';

/** The partial derivative by one name, as a formula again; mathjs does the calculus. */
export function partial(expression: Expression, by: string, names: ReadonlySet<string>): Expression {
  const text = print(expression, { ...numberCode, power: (base, exponent) => `${base}^${exponent}`, pi: () => numberCode.name('pi'), sqrt: (of) => `sqrt(${of})` });
  return readExpression(derivative(text, by).toString(), names);
}
