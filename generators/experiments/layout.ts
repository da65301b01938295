import type { circuits } from './circuits.ts';

/** How an experiment's record is set out on paper; the words for it are content. */
export type Block =
  /** A table of observations: its columns, the verdict that each row ends in, and the values that are found from it. */
  | { table: string; columns: string[]; verdict?: string; after: string[]; rows: Rows }
  /** Single values, each on a line. */
  | { values: string[] }
  /** Points of a table and the line or curve through them: paper for the student, the plot on the key. */
  | Plotted;

/** What the rows of a table are called: 1, 2, 3; 1 a, 1 b, 2 a; or A, B, C. */
export type Rows = 'numbered' | 'pairs' | 'lettered';

/** A graph by its name; quantities along its axes, and the summaries that are its line, if it is one. */
export interface Plotted {
  graph: string;
  x: string;
  y: string;
  /** Left out where the points lie on no straight line: then a smooth curve joins them. */
  slope?: string;
  /** Left out where the line goes through the origin. */
  intercept?: string;
  /** Axes that start at zero. */
  fromZero?: readonly ('x' | 'y')[];
}

/** A choice of form that a reading of the student's decides, told beside it, and the quantity whose formula hangs on it. */
export interface Decided {
  choice: string;
  by: string;
  formula: string;
  /** The cases that are told apart while the choice is open. */
  cases: string[];
}

export interface Layout {
  /** Readings of the scale that are taken outside the window on purpose. */
  offWindow?: string[];
  /** The circuit that is drawn; none in drills without one. */
  circuit?: keyof typeof circuits;
  observations: Block[];
  /** Choices that readings decide; none where it is left out. */
  decided?: Decided[];
  /** Steps whose working is written out, in order. */
  working: string[];
  /** Steps that the result states. */
  result: string[];
  /** The deciding answers: columns of the marking grid. */
  answers: string[];
  /** Answers by which two sheets of a class are kept apart, those that matter most first. */
  apart: string[];
  /** Results whose uncertainty the key works out. */
  uncertain: string[];
  /** True values that the teacher is shown, with their units. */
  truths: { id: string; unit: string }[];
}
