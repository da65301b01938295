import type { Expression } from './expression.ts';

const number = (value: number): Expression => ({ is: 'number', text: String(value) });
const isNumber = (expression: Expression, value: number) => expression.is === 'number' && Number(expression.text) === value;
const zero = number(0);

/**
 * The partial derivative by one name, in the forms that a formula may take. What is nought or once something is
 * left out; nothing else is simplified, so that the signs of the parts stay in sight for interval arithmetic.
 */
export function partial(expression: Expression, by: string): Expression {
  const of = (part: Expression) => partial(part, by);
  switch (expression.is) {
    case 'number':
    case 'pi':
      return zero;
    case 'name':
      return expression.id === by ? number(1) : zero;
    case 'negative':
      return negative(of(expression.of));
    case 'sqrt':
      return quotient(of(expression.of), product(number(2), expression));
    case 'power':
      return product(product(number(expression.exponent), power(expression.base, expression.exponent - 1)), of(expression.base));
    case 'sum':
      return sum(of(expression.left), of(expression.right));
    case 'difference':
      return difference(of(expression.left), of(expression.right));
    case 'product':
      return sum(product(of(expression.left), expression.right), product(expression.left, of(expression.right)));
    case 'quotient': {
      const { left, right } = expression;
      return difference(quotient(of(left), right), quotient(product(left, of(right)), power(right, 2)));
    }
  }
}

function negative(of: Expression): Expression {
  return isNumber(of, 0) ? of : { is: 'negative', of };
}

function sum(left: Expression, right: Expression): Expression {
  if (isNumber(left, 0)) return right;
  return isNumber(right, 0) ? left : { is: 'sum', left, right };
}

function difference(left: Expression, right: Expression): Expression {
  if (isNumber(left, 0)) return negative(right);
  return isNumber(right, 0) ? left : { is: 'difference', left, right };
}

function product(left: Expression, right: Expression): Expression {
  if (isNumber(left, 0) || isNumber(right, 1)) return left;
  return isNumber(right, 0) || isNumber(left, 1) ? right : { is: 'product', left, right };
}

function quotient(left: Expression, right: Expression): Expression {
  return isNumber(left, 0) ? left : { is: 'quotient', left, right };
}

function power(base: Expression, exponent: number): Expression {
  return exponent === 1 ? base : { is: 'power', base, exponent };
}
