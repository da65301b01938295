import { intervalCode, numberCode } from './code.ts';
import { partial } from './derivative.ts';
import type { Expression } from './expression.ts';
import { type Dialect, Hold, print } from './print.ts';

/** The functions of a formula (FormulaFunctions) as the source of an object; it calls `power`, and the intervals' arithmetic `I`. */
export function formulaCode(expression: Expression, names: readonly string[]): string {
  const partials = names.map((name) => partial(expression, name));
  const number = (of: Expression) => `(x)=>${print(of, byPosition(numberCode, names))}`;
  const interval = (of: Expression) => `(x)=>${print(of, byPosition(intervalCode, names))}`;
  return `{value:${number(expression)},slopes:[${partials.map(number).join(',')}],slopeRanges:[${partials.map(interval).join(',')}],natural:${interval(expression)}}`;
}

/** Names by their place in the list, so that a current called I or a power called P0 cannot hide what the code calls. */
function byPosition(dialect: Dialect, names: readonly string[]): Dialect {
  return { ...dialect, name: (id) => ({ text: `x[${names.indexOf(id)}]`, hold: Hold.atom }) };
}
