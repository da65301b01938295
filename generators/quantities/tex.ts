import { type Dialect, Hold, type Piece, numberHold } from './print.ts';
import { parts } from './written.ts';
import type { Written } from './step.ts';

/** A written number in TeX; a power of ten becomes one. */
export function texNumber(written: Written): Piece {
  const [mantissa, exponent] = parts(written);
  const hold = numberHold(mantissa, exponent);
  return { text: exponent === 0 ? mantissa : `${mantissa} \\times 10^{${exponent}}`, hold };
}

const shared = {
  number: texNumber,
  pi: (): Piece => ({ text: '\\pi', hold: Hold.atom }),
  negative: (of: string) => `-${of}`,
  sqrt: (of: string) => `\\sqrt{${of}}`,
  sum: (left: string, right: string) => `${left} + ${right}`,
  difference: (left: string, right: string) => `${left} - ${right}`,
  quotient: (left: string, right: string) => `\\frac{${left}}{${right}}`,
  power: (base: string, exponent: number) => `${base}^{${exponent}}`,
  // In a group of its own a minus that comes first is a sign, with no space after it.
  bracket: (inside: string) => (inside.startsWith('-') ? `\\left({${inside}}\\right)` : `\\left(${inside}\\right)`),
  barGroups: true,
};

/** A formula in symbols: factors stand side by side. */
export function texSymbols(symbol: (id: string) => string): Dialect {
  return {
    ...shared,
    name: (id) => ({ text: symbol(id), hold: Hold.atom }),
    product: (left, right) => (/^\d/.test(right) ? `${left} \\times ${right}` : `${left}\\,${right}`),
  };
}

/** A formula with numbers put in, digits as they are written. */
export function texSubstituted(value: (id: string) => Written): Dialect {
  return {
    ...shared,
    name: (id) => texNumber(value(id)),
    product: (left, right) => `${left} \\times ${right}`,
  };
}
