import type { Readings } from '../quantities/evaluate.ts';
import type { Digits, Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Exact } from './exact.ts';

/** Values that a given is drawn from, as they are printed: a list, or every step from one to the other. */
export type Values = readonly Written[] | { from: number; to: number; step: Written };

/** A quantity of a family, given in one direction and perhaps asked for in another. */
export interface Quantity {
  /** How it is written, in TeX; without it, by its value, as the length of the bridge wire is. */
  tex?: string;
  /** A key of quantities/unit.ts. */
  unit: string;
  /** What it is drawn from where it is given. */
  values?: Values;
  /** What it is unless a setter says otherwise; such a quantity need not be given. A drawn question varies it where it has values. */
  fixed?: Written;
  /** How many rows this table has; such a quantity is `fixed`, and counted. */
  count?: string;
  /** Expressions between which it must lie, ends excluded; '0' and nothing above where left out. */
  between?: readonly [low: string | undefined, high: string | undefined];
  /** The lower end of `between` is not excluded: an error may be nought, and a scale may be read there. */
  mayBeLeast?: true;
  /** It goes either way, as a movement does; a slip may turn it round. */
  eitherWay?: true;
  /** It counts things. */
  whole?: true;
  /** Where it lies in a question worth printing: a null point is not put near an end. */
  printed?: readonly [low: number, high: number];
  /** An asked value is a multiple of this in a printed question; 'any' where only the physics decides. Otherwise it terminates or is a simple fraction. */
  neat?: number | 'any';
  /** How an answer is written; three figures where left out. */
  digits?: Digits;
  /** The fewest digits that an answer is accepted with, where these are fewer than it is written with: of an error, two figures say enough. */
  accepted?: Digits;
  /** The table whose every row holds one value. */
  per?: string;
}

/** One line of working. */
export interface Work {
  id: string;
  /** The expression; a line has this, or a mean, or a decision. */
  as?: string;
  /** The mean of this column. */
  mean?: string;
  /** A choice with a reason, for a family whose answer is in words; as options they stand `inOrder`, or in a random one. */
  decide?: { choices: readonly string[]; inOrder?: true; by(on: { value(id: string): number; rows(id: string): number[] }): string };
  /** Other expressions on the same quantities, by the name of the mistake. */
  slips?: Readonly<Record<string, string>>;
  /** The quantities are converted to SI units first, in sight of the reader. */
  si?: true;
  /** For the method; 1 where left out. The answer with its unit has one mark more. */
  marks?: number;
}

/** One direction of asking. What its lines use and do not make is given. */
export interface Ask {
  finds: readonly string[];
  steps: readonly Work[];
  /** 1: put numbers into formulas or share out in a ratio; 2: rearrange, or compare two balances; 3: simultaneous equations or a theorem that spares them, a quadratic, or a sum along the wire. */
  algebra: 1 | 2 | 3;
  /** Givens are drawn by this other direction and taken from its answers, so that this one's are simple in turn. */
  drawnBy?: string;
  /** Given although the answer does not depend on it. */
  idle?: readonly string[];
}

/** What a family is in one arrangement. */
export interface Body {
  quantities: Readonly<Record<string, Quantity>>;
  /** What holds between them, each once, as 'P * (W - l) = Q * l'; every answer is put back into it by a test. */
  condition: readonly string[];
  /** What must be positive for the question to be sound, by the name of the reason. */
  holds?: Readonly<Record<string, string>>;
  asks: Readonly<Record<string, Ask>>;
  /** The name of the reason why whole columns make no question; nothing where they make one. */
  fault?(columns: Exact): string | undefined;
  /** Draws the givens where they depend on each other. */
  draw?(random: Random, ask: string): Readings;
}

/** Which arrangement a question is set in: { gap: 'left' }. */
export type Choice = Readonly<Record<string, string>>;

/** A family of numerical questions. */
export interface Family {
  id: string;
  /** Keys of the syllabus topics in content. */
  tags: readonly string[];
  /** Arrangements, each with its names; the first is taken where a setter does not say. */
  choices?: Readonly<Record<string, readonly string[]>>;
  body: Body | ((choice: Choice) => Body);
}
