import { type Dialect, Hold, numberHold } from './print.ts';
import { parts } from './written.ts';
import type { Summary, Written } from './step.ts';

/** The words of a language for a formula read aloud; each entry has blanks {left}, {right}, {of}. */
export interface SpokenWords {
  sum: string;
  difference: string;
  product: string;
  quotient: string;
  negative: string;
  sqrt: string;
  bracket: string;
  squared: string;
  cubed: string;
  power: string;
  tens: string;
  /** Below the sum of a mean: 'number of values'. */
  count: string;
  /** A value {left} and its uncertainty {right}. */
  plusMinus: string;
  /** The error of a quantity, blank {of}. */
  delta: string;
  pi: string;
  equals: string;
  /** Mean, slope, intercept; blanks {x} and {y} for the columns. */
  summaries: Record<Summary['by'], string>;
  units: Record<string, string>;
  symbols: Record<string, string>;
}

/** Puts words into a sentence's named blanks: fill('{left} plus {right}', { left, right }). */
export function fill(sentence: string, blanks: Record<string, string | number>): string {
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    const word = blanks[name];
    if (word === undefined) throw new Error(`no word for the blank {${name}} in "${sentence}"`);
    return String(word);
  });
}

/** A written number read aloud. */
export function spokenNumber(written: Written, words: SpokenWords): string {
  const [mantissa, exponent] = parts(written);
  const sound = (text: string) => (text.startsWith('-') ? fill(words.negative, { of: text.slice(1) }) : text);
  return exponent === 0 ? sound(mantissa) : fill(words.tens, { of: sound(mantissa), exponent: sound(String(exponent)) });
}

/** A formula read aloud with numbers put in, digits as they are written. */
export function spokenSubstituted(words: SpokenWords, value: (id: string) => Written): Dialect {
  const dialect = spoken(words, value);
  return { ...dialect, name: (id) => dialect.number(value(id)) };
}

/** A formula read aloud; `name` says a quantity's symbol. */
export function spoken(words: SpokenWords, name: (id: string) => string): Dialect {
  const two = (sentence: string) => (left: string, right: string) => fill(sentence, { left, right });
  const powers: Record<number, string> = { 2: words.squared, 3: words.cubed };
  return {
    number: (text) => ({ text: spokenNumber(text, words), hold: numberHold(...parts(text)) }),
    name: (id) => ({ text: name(id), hold: Hold.atom }),
    pi: () => ({ text: words.pi, hold: Hold.atom }),
    negative: (of) => fill(words.negative, { of }),
    sqrt: (of) => fill(words.sqrt, { of }),
    sum: two(words.sum),
    difference: two(words.difference),
    product: two(words.product),
    quotient: two(words.quotient),
    power: (base, exponent) => fill(powers[exponent] ?? words.power, { of: base, exponent }),
    bracket: (of) => fill(words.bracket, { of }),
    barGroups: true,
  };
}
