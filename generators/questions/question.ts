import { acceptRanges } from '../quantities/accept.ts';
import { type Readings, type Values, evaluate } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval, Step, Written } from '../quantities/step.ts';
import { round } from '../quantities/written.ts';
import type { Direction } from './direction.ts';
import { type Exact, exactly } from './exact.ts';
import { LATITUDE } from './firm.ts';
import { areAlike, digitsOf, simpleFraction } from './number.ts';
import { type SlipValue, isNeat, slipValues } from './sound.ts';

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

/** Works a question on sound givens. */
export function question(direction: Direction, readings: Readings): Question {
  const exact = exactly(direction.program, readings);
  const { program, values } = chainShown(direction, readings, exact);
  const ranges = acceptRanges(direction.program, readings, LATITUDE);
  return {
    direction,
    readings,
    program,
    values,
    answers: direction.ask.finds.flatMap((id) => (exact.has(id) ? [answer(id, direction, exact, values, ranges)] : [])),
    verdicts: verdicts(direction, exact),
    slips: slipValues(direction, readings, exact).filter(({ answers }) => Object.entries(answers).some(([id, value]) => !areAlike(value, exact.get(id)![0]!))),
    marks: marks(direction),
    difficulty: difficulty(direction),
  };
}

function answer(id: string, direction: Direction, exact: Exact, values: Values, ranges: Map<string, Interval[]>): Answer {
  const value = exact.get(id)![0]!;
  const shown = round(Number(values.written.get(id)![0]!), answerDigits(id, direction, value), 'even');
  const [low, high] = ranges.get(id)![0]!;
  const fraction = simpleFraction(value);
  // The key's own chain, to four figures where the answer ends there, is honest work too.
  return { id, exact: value, shown, ...(fraction !== undefined && { fraction }), accept: [Math.min(low, Number(shown)), Math.max(high, Number(shown))] };
}

/** Figures of a value on the way that does not end: the fewest with which every answer comes out as it rounds without them. */
const ON_THE_WAY = [5, 6, 7, 8];

/** The working as the key writes it: rounding on the way moves no answer. */
function chainShown(direction: Direction, readings: Readings, exact: Exact): { program: Program; values: Values } {
  const chain = (figures: number) => {
    const program = asShown(direction, readings, exact, figures);
    return { program, values: evaluate(program, readings, 'even') };
  };
  const first = chain(ON_THE_WAY[0]!);
  if (comesOut(direction, exact, first.values)) return first;
  return ON_THE_WAY.slice(1).map(chain).find(({ values }) => comesOut(direction, exact, values)) ?? first;
}

/** Whether every answer of a chain of working rounds as its exact value does. */
const comesOut = (direction: Direction, exact: Exact, { written }: Values) =>
  direction.ask.finds.every((id) => {
    const [value] = exact.get(id) ?? [];
    if (value === undefined) return true;
    const digits = answerDigits(id, direction, value);
    return round(Number(written.get(id)![0]!), digits, 'even') === round(value, digits, 'even');
  });

const answerDigits = (id: string, { body }: Direction, value: number) => body.quantities[id]!.digits ?? digitsOf(value, true);

/**
 * What a line takes from lines before it and has to be carried with more figures than an answer is written with. Where no
 * answer is simple, later lines go on from the answers as they are written, as printed keys do.
 */
function goneOnFrom({ program, body, ask: { steps, finds } }: Direction, exact: Exact): Set<string> {
  const isSimple = finds.every((id) => (exact.get(id) ?? []).every((value) => isNeat(body.quantities[id]!, value)));
  return new Set(isSimple ? steps.flatMap(({ id, as, mean }) => (as === undefined ? (mean ?? []) : program.compiled(id).as.names)) : []);
}

/** The same program with answers that end written in full, and the wire's length in formulas as the number that it is. */
function asShown(direction: Direction, readings: Readings, exact: Exact, figures: number): Program {
  const { program, body, ask } = direction;
  const onTheWay = goneOnFrom(direction, exact);
  const steps = program.steps.map((step): Step => {
    if (step.kind === 'verdict') return step;
    const { tex, digits } = body.quantities[step.id]!;
    const symbol = tex ?? [readings[step.id] ?? step.id].flat()[0]!;
    const column = exact.get(step.id)!;
    if (step.kind !== 'relation' && step.kind !== 'summary') return { ...step, tex: symbol };
    return { ...step, tex: symbol, ...(digits === undefined && column.length === 1 && { digits: digitsOf(column[0]!, ask.finds.includes(step.id) && !onTheWay.has(step.id), figures) }) };
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
