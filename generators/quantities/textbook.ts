import type { Expression } from './expression.ts';

/** A term of a relative error: times · Δ(sum of `off`) / over. */
export interface RelativeTerm {
  times: number;
  /** The names whose absolute errors are added. */
  off: string[];
  over: Expression;
}

/**
 * The textbook rule for the largest relative error, read off the form of a formula: factors and divisors add
 * their relative errors, a power multiplies its own, a sum or difference adds absolute errors. `exact` names
 * carry no error. Nothing where the rule does not apply (a number added to a product, say).
 */
export function relativeTerms(expression: Expression, exact: ReadonlySet<string>): RelativeTerm[] | undefined {
  switch (expression.is) {
    case 'number':
    case 'pi':
      return [];
    case 'name':
      return exact.has(expression.id) ? [] : [{ times: 1, off: [expression.id], over: expression }];
    case 'negative':
      return relativeTerms(expression.of, exact);
    case 'sqrt':
      return relativeTerms(expression.of, exact)?.map((term) => ({ ...term, times: term.times / 2 }));
    case 'power':
      return relativeTerms(expression.base, exact)?.map((term) => ({ ...term, times: term.times * expression.exponent }));
    case 'product':
    case 'quotient':
      return both(relativeTerms(expression.left, exact), relativeTerms(expression.right, exact));
    case 'sum':
    case 'difference':
      return sumTerm(expression, exact);
  }
}

function both(left: RelativeTerm[] | undefined, right: RelativeTerm[] | undefined): RelativeTerm[] | undefined {
  return left && right && [...left, ...right];
}

function sumTerm(expression: Expression, exact: ReadonlySet<string>): RelativeTerm[] | undefined {
  const names = namesOfSum(expression);
  if (!names || new Set(names).size < names.length) return undefined;
  const off = names.filter((name) => !exact.has(name));
  return off.length === 0 ? [] : [{ times: 1, off, over: expression }];
}

/** The names in names and numbers added and subtracted; where none stands twice, each error enters once and whole. */
function namesOfSum(expression: Expression): string[] | undefined {
  switch (expression.is) {
    case 'name':
      return [expression.id];
    case 'number':
      return [];
    case 'sum':
    case 'difference': {
      const left = namesOfSum(expression.left);
      const right = namesOfSum(expression.right);
      return left && right && [...left, ...right];
    }
    default:
      return undefined;
  }
}

/** Puts the formula of a step in the place of its name, so that an error is traced to what was read. */
export function expand(expression: Expression, replace: (id: string) => Expression | undefined): Expression {
  const inner = (part: Expression) => expand(part, replace);
  switch (expression.is) {
    case 'number':
    case 'pi':
      return expression;
    case 'name':
      return replace(expression.id) ?? expression;
    case 'negative':
    case 'sqrt':
      return { ...expression, of: inner(expression.of) };
    case 'power':
      return { ...expression, base: inner(expression.base) };
    default:
      return { ...expression, left: inner(expression.left), right: inner(expression.right) };
  }
}
