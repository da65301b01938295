import { decimalsOf, parts } from '../quantities/written.ts';
import type { StudentMarks } from './mark-class.ts';

/** So many numbers that could end in 0, none of which does, are no chance beside some that are a figure short. */
const FEWEST_NUMBERS = 20;
const FEWEST_SHORT = 3;

/**
 * How many numbers are a figure short as a spreadsheet makes them, which drops the zeros at the end of a number and
 * leaves those of a text such as '2.60 Ω'; 0 where some number does end in 0, so that nothing was dropped.
 */
export function lostZeros(students: readonly StudentMarks[]): number {
  const bare = students.flatMap(({ answers }) => answers.filter(({ entry }) => entry.is === 'number' && !entry.unit && !entry.unitless));
  // A power of ten is shown by spreadsheets with two decimals, whatever was typed.
  const plain = bare.map(({ value }) => parts(value!)).filter(([, exponent]) => exponent === 0);
  const mantissas = plain.map(([mantissa]) => mantissa).filter((mantissa) => decimalsOf(mantissa) > 0);
  const short = bare.filter(({ extraFigures }) => extraFigures < 0).length;
  const dropped = mantissas.length >= FEWEST_NUMBERS && short >= FEWEST_SHORT && !mantissas.some((mantissa) => mantissa.endsWith('0'));
  return dropped ? short : 0;
}
