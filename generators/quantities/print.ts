import type { Expression } from './expression.ts';

/** How tightly a printed piece holds together; a looser piece inside a tighter one needs brackets. */
export const Hold = { sum: 1, negative: 2, product: 3, power: 4, atom: 5 } as const;
export type Hold = (typeof Hold)[keyof typeof Hold];

/** A printed piece and how tightly it holds. */
export interface Piece {
  text: string;
  hold: Hold;
}

/** A language that formulas are printed in. Each entry joins pieces that are already bracketed as needed. */
export interface Dialect {
  number(text: string): Piece;
  name(id: string): Piece;
  pi(): Piece;
  negative(of: string): string;
  sqrt(of: string): string;
  sum(left: string, right: string): string;
  difference(left: string, right: string): string;
  product(left: string, right: string): string;
  /** A fraction bar groups its two parts by itself; then they come without brackets and the whole is an atom. */
  quotient(left: string, right: string): string;
  power(base: string, exponent: number): string;
  bracket(inside: string): string;
  barGroups: boolean;
}

/** A number with a sign or a power of ten is not one piece: squared, or taken away, it stands in brackets. */
export function numberHold(mantissa: string, exponent: number): Hold {
  if (mantissa.startsWith('-')) return Hold.negative;
  return exponent === 0 ? Hold.atom : Hold.product;
}

/** Prints a formula in a dialect, with brackets wherever the tree needs them and nowhere else. */
export function print(expression: Expression, dialect: Dialect): string {
  return piece(expression, dialect).text;
}

function piece(expression: Expression, dialect: Dialect): Piece {
  const within = (part: Expression, least: Hold): Piece => {
    const made = piece(part, dialect);
    return made.hold < least ? { text: dialect.bracket(made.text), hold: Hold.atom } : made;
  };
  const at = (part: Expression, least: Hold) => within(part, least).text;
  switch (expression.is) {
    case 'number':
      return dialect.number(expression.text);
    case 'name':
      return dialect.name(expression.id);
    case 'pi':
      return dialect.pi();
    case 'negative':
      return { text: dialect.negative(at(expression.of, Hold.power)), hold: Hold.negative };
    case 'sqrt':
      return { text: dialect.sqrt(at(expression.of, Hold.sum)), hold: Hold.atom };
    case 'power':
      return { text: dialect.power(at(expression.base, Hold.atom), expression.exponent), hold: Hold.power };
    case 'sum':
    case 'difference':
      return {
        text: dialect[expression.is](at(expression.left, Hold.sum), at(expression.right, Hold.product)),
        hold: Hold.sum,
      };
    case 'product':
    case 'quotient': {
      if (expression.is === 'quotient' && dialect.barGroups)
        return { text: dialect.quotient(at(expression.left, Hold.sum), at(expression.right, Hold.sum)), hold: Hold.power };
      const left = within(expression.left, Hold.negative);
      return { text: dialect[expression.is](left.text, at(expression.right, Hold.power)), hold: least(left.hold, Hold.product) };
    }
  }
}

/** A product that opens with a minus holds no tighter than the minus: a − (−b × c) keeps its brackets. */
const least = (a: Hold, b: Hold): Hold => (a < b ? a : b);
