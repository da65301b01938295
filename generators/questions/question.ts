import { acceptRanges } from '../quantities/accept.ts';
import { type Readings, type Values, evaluate } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval, Step, Written } from '../quantities/step.ts';
import type { Direction } from './direction.ts';
import { type Exact, exactly } from './exact.ts';
import { areAlike, digitsOf, simpleFraction } from './number.ts';
import { type SlipValue, slipValues } from './sound.ts';

/** A question worked out. */
export interface Question {
  direction: Direction;
  /** All that is given, what is fixed included. */
  readings: Readings;
  /** Written as the key shows it. */
  program: Program;
  values: Values;
  answers: Answer[];
  /** Answers in words, by the line that decides. */
  verdicts: Readonly<Record<string, string>>;
  /** Slips that show in these numbers. */
  slips: SlipValue[];
  marks: number;
  difficulty: Difficulty;
}

export interface Answer {
  id: string;
  exact: number;
  shown: Written;
  /** '58/3', where a decimal does not end and a simple fraction says all. */
  fraction?: string;
  /** Every value that honest rounding to three figures or more reaches; to two, where two are accepted. */
  accept: Interval;
}

/** How hard a question is. */
export interface Difficulty {
  /** Lines of working. */
  steps: number;
  unknowns: number;
  /** As the family has it: see Ask in family.ts. */
  algebra: 1 | 2 | 3;
  /** 1 easy, 2 middling, 3 hard. */
  level: 1 | 2 | 3;
}

const LATITUDE = { tables: false, drawn: {} };

/** Works a question on sound givens. */
export function question(direction: Direction, readings: Readings): Question {
  const exact = exactly(direction.program, readings);
  const program = asShown(direction, readings, exact);
  const values = evaluate(program, readings, 'even');
  const ranges = acceptRanges(direction.program, readings, LATITUDE);
  return {
    direction,
    readings,
    program,
    values,
    answers: direction.ask.finds.flatMap((id) => (exact.has(id) ? [answer(id, exact, values, ranges)] : [])),
    verdicts: verdicts(direction, exact),
    slips: slipValues(direction, readings, exact).filter(({ answers }) => Object.entries(answers).some(([id, value]) => !areAlike(value, exact.get(id)![0]!))),
    marks: marks(direction),
    difficulty: difficulty(direction),
  };
}

function answer(id: string, exact: Exact, values: Values, ranges: Map<string, Interval[]>): Answer {
  const value = exact.get(id)![0]!;
  const shown = values.written.get(id)![0]!;
  const [low, high] = ranges.get(id)![0]!;
  const fraction = simpleFraction(value);
  // The key's own chain, to four figures where the answer ends there, is honest work too.
  return { id, exact: value, shown, ...(fraction !== undefined && { fraction }), accept: [Math.min(low, Number(shown)), Math.max(high, Number(shown))] };
}

/** The same program with answers that end written in full, and the wire's length in formulas as the number that it is. */
function asShown({ program, body, ask }: Direction, readings: Readings, exact: Exact): Program {
  const steps = program.steps.map((step): Step => {
    if (step.kind === 'verdict') return step;
    const { tex, digits } = body.quantities[step.id]!;
    const symbol = tex ?? [readings[step.id] ?? step.id].flat()[0]!;
    const column = exact.get(step.id)!;
    if (step.kind !== 'relation' && step.kind !== 'summary') return { ...step, tex: symbol };
    return { ...step, tex: symbol, ...(digits === undefined && column.length === 1 && { digits: digitsOf(column[0]!, ask.finds.includes(step.id)) }) };
  });
  const byId = new Map(steps.map((step) => [step.id, step]));
  return { ...program, steps, step: (id) => byId.get(id) as ReturnType<Program['step']> };
}

function verdicts({ program }: Direction, exact: Exact): Record<string, string> {
  const on = { rows: (id: string) => [...exact.get(id)!], value: (id: string) => exact.get(id)![0]!, worst: () => 0, expanded: () => 0 };
  return Object.fromEntries(program.steps.flatMap((step) => (step.kind === 'verdict' ? [[step.id, step.decide(on)]] : [])));
}

/** A mark for each line's method, and one for each answer with its unit. */
export function marks({ ask }: Pick<Direction, 'ask'>): number {
  return ask.steps.reduce((sum, step) => sum + (step.marks ?? 1), 0) + ask.finds.length;
}

/** A chain of so many lines and unknowns at most is easy where numbers are only put in, … */
const SHORT = 4;
/** … and one of so many is hard where each line is rearranged. Both: common practice, no source. */
const LONG = 7;

/**
 * How hard a direction is. Easy: numbers put into a formula, for a short way. Hard: simultaneous equations, a quadratic
 * or a sum along the wire, or a long way of rearranging. Middling: everything else.
 */
export function difficulty({ ask }: Pick<Direction, 'ask'>): Difficulty {
  const { algebra } = ask;
  const { length: steps } = ask.steps;
  const { length: unknowns } = ask.finds;
  const way = steps + unknowns;
  const isHard = algebra === 3 || (algebra === 2 && way >= LONG);
  return { steps, unknowns, algebra, level: isHard ? 3 : algebra === 1 && way <= SHORT ? 1 : 2 };
}
