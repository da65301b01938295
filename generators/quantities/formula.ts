import { intervalCode, numberCode } from './code.ts';
import { partial } from './derivative.ts';
import { type Expression, namesIn, readExpression } from './expression.ts';
import * as I from './interval.ts';
import { type Dialect, Hold, print } from './print.ts';
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

const formulas = new Map<string, Formula>();

/** Reads and compiles an expression once; `known` are the names that it may use. */
export function formula(text: string, known: ReadonlySet<string>): Formula {
  const expression = readExpression(text, known);
  const kept = formulas.get(text);
  if (kept) return kept;
  const made = compile(text, expression);
  formulas.set(text, made);
  return made;
}

function compile(text: string, expression: Expression): Formula {
  const names = namesIn(expression);
  const value = numberFunction(expression, names);
  const partials = names.map((name) => partial(expression, name));
  const slopes = partials.map((one) => numberFunction(one, names));
  const slopeRanges = partials.map((one) => intervalFunction(one, names));
  const natural = intervalFunction(expression, names);
  const usesPi = /\bpi\b/.test(text);
  return {
    text,
    expression,
    names,
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
function cornersOf(args: readonly Interval[], slopes: ((args: readonly Interval[]) => Interval)[]): [number[], number[]] | undefined {
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

function numberFunction(expression: Expression, names: string[]): (args: readonly number[]) => number {
  const make = new Function('power', `return (x) => ${print(expression, byPosition(numberCode, names))}`);
  return make(I.powerOf) as (args: readonly number[]) => number;
}

function intervalFunction(expression: Expression, names: string[]): (args: readonly Interval[]) => Interval {
  const make = new Function('I', `return (x) => ${print(expression, byPosition(intervalCode, names))}`);
  return make(I) as (args: readonly Interval[]) => Interval;
}

/** Names by their place in the list, so that a current called I or a power called P0 cannot hide what the code calls. */
function byPosition(dialect: Dialect, names: string[]): Dialect {
  return { ...dialect, name: (id) => ({ text: `x[${names.indexOf(id)}]`, hold: Hold.atom }) };
}
