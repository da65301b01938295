import type { MathNode, OperatorNode } from 'mathjs';
import { parse } from './mathjs.ts';

/** The few forms that a formula may take; every printer and evaluator handles exactly these. */
export type Expression =
  | { is: 'number'; text: string }
  | { is: 'name'; id: string }
  | { is: 'pi' }
  | { is: 'negative'; of: Expression }
  | { is: 'sqrt'; of: Expression }
  | { is: 'sum' | 'difference' | 'product' | 'quotient'; left: Expression; right: Expression }
  | { is: 'power'; base: Expression; exponent: number };

/**
 * Reads a formula such as 'R * (W - l) / l'. A name outside `known` is refused: mathjs itself would
 * take a missing L for a litre.
 */
export function readExpression(text: string, known: ReadonlySet<string>): Expression {
  return fromNode(parse(text), text, known);
}

const operators: Record<string, 'sum' | 'difference' | 'product' | 'quotient'> = {
  add: 'sum',
  subtract: 'difference',
  multiply: 'product',
  divide: 'quotient',
};

function fromNode(node: MathNode, text: string, known: ReadonlySet<string>): Expression {
  const inner = (child: MathNode) => fromNode(child, text, known);
  const any = node as MathNode & { name: string; value: unknown; content: MathNode; args: MathNode[] };
  switch (node.type) {
    case 'ConstantNode':
      if (typeof any.value !== 'number') break;
      return { is: 'number', text: String(any.value) };
    case 'SymbolNode':
      if (any.name === 'pi') return { is: 'pi' };
      if (!known.has(any.name)) throw new Error(`"${text}" names ${any.name}, which does not stand above it`);
      return { is: 'name', id: any.name };
    case 'ParenthesisNode':
      return inner(any.content);
    case 'FunctionNode':
      if ((any as unknown as { fn: { name: string } }).fn.name === 'sqrt' && any.args.length === 1) return { is: 'sqrt', of: inner(any.args[0]!) };
      break;
    case 'OperatorNode':
      return fromOperator(node as OperatorNode, text, inner);
  }
  throw new Error(`"${text}": ${node.toString()} is not a form that a formula may take`);
}

function fromOperator(node: OperatorNode, text: string, inner: (child: MathNode) => Expression): Expression {
  const [left, right] = node.args as [MathNode, MathNode];
  if (node.fn === 'unaryMinus') return { is: 'negative', of: inner(left) };
  if (node.fn === 'pow') {
    const exponent = Number(right.toString());
    if (exponent === 1) return inner(left);
    if (!Number.isInteger(exponent) || exponent < 1) throw new Error(`"${text}": the power must be a whole number from 1 up`);
    return { is: 'power', base: inner(left), exponent };
  }
  const is = operators[node.fn];
  if (!is) throw new Error(`"${text}": no operator ${node.op} in a formula`);
  return { is, left: inner(left), right: inner(right) };
}

/** The names in a formula, each once, in the order in which they are written. */
export function namesIn(expression: Expression): string[] {
  switch (expression.is) {
    case 'name':
      return [expression.id];
    case 'number':
    case 'pi':
      return [];
    case 'negative':
    case 'sqrt':
      return namesIn(expression.of);
    case 'power':
      return namesIn(expression.base);
    default:
      return [...new Set([...namesIn(expression.left), ...namesIn(expression.right)])];
  }
}
