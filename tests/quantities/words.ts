import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { SpokenWords } from '../../generators/quantities/spoken.ts';

/** Words that spell a formula's structure out, so that a test can read it back. */
export const words: SpokenWords = {
  sum: '{left} + {right}',
  difference: '{left} - {right}',
  product: '{left} * {right}',
  quotient: 'frac({left}, {right})',
  negative: 'minus {of}',
  sqrt: 'sqrt({of})',
  bracket: '({of})',
  squared: '{of} squared',
  cubed: '{of} cubed',
  power: '{of} to the {exponent}',
  tens: '{of} times ten to the {exponent}',
  count: 'number',
  plusMinus: '{left} plus or minus {right}',
  delta: 'delta {of}',
  pi: 'pi',
  equals: '{left} = {right}',
  summaries: { mean: 'mean of {x}', slope: 'slope of {y} against {x}', intercept: 'intercept of {y} against {x}', 'slope through origin': 'slope of {y} against {x} through the origin' },
  units: { mm: 'millimetres', m: 'metres', 'Ω': 'ohms' },
  symbols: { d: 'diameter', meanX: 'mean X' },
};

/** The words that English sheets are read with. */
export const english = parse(readFileSync(new URL('../../content/en/spoken.yaml', import.meta.url), 'utf8')) as SpokenWords;
