import type { Expression } from './expression.ts';
import type { Interval } from './step.ts';

/** An expression made ready to use. Arguments stand in the order of `names`. */
export interface Formula {
  text: string;
  expression: Expression;
  names: string[];
  value(args: readonly number[]): number;
  /** The partial derivatives, one a name, at the arguments. */
  gradient(args: readonly number[]): number[];
  /** The values it takes while each argument stays in its interval: exact where the signs of the partials are proved, else an outer bound. */
  range(args: readonly Interval[]): Interval;
}

/** What is computed of a formula, as plain functions of its arguments. */
export interface FormulaFunctions {
  value(args: readonly number[]): number;
  slopes: ((args: readonly number[]) => number)[];
  slopeRanges: ((args: readonly Interval[]) => Interval)[];
  natural(args: readonly Interval[]): Interval;
}

/** A formula from its functions, wherever those were compiled. */
export function makeFormula(of: Pick<Formula, 'text' | 'expression' | 'names'>, { value, slopes, slopeRanges, natural }: FormulaFunctions): Formula {
  const usesPi = /\bpi\b/.test(of.text);
  return {
    ...of,
    value,
    gradient: (args) => slopes.map((slope) => slope(args)),
    range(args) {
      if (usesPi) return natural(args);
      const corners = cornersOf(args, slopeRanges);
      return corners ? [value(corners[0]), value(corners[1])] : natural(args);
    },
  };
}

/** The corner of the box with the least value and that with the greatest, if every partial keeps one sign in it. */
function cornersOf(args: readonly Interval[], slopes: FormulaFunctions['slopeRanges']): [number[], number[]] | undefined {
  const least: number[] = [];
  const greatest: number[] = [];
  for (const [i, [low, high]] of args.entries()) {
    const [down, up] = slopes[i]!(args);
    if (!(down >= 0 || up <= 0)) return undefined;
    least.push(down >= 0 ? low : high);
    greatest.push(down >= 0 ? high : low);
  }
  return [least, greatest];
}
