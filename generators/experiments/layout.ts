/** How an experiment's record is set out on paper; the words for it are content. */
export type Block =
  /** A table of observations: its columns, and the values that are found from it. */
  | { table: string; columns: string[]; after: string[]; rows: 'numbered' | 'pairs' }
  /** Single values, each on a line. */
  | { values: string[] };

/** A choice of form that a reading of the student's decides, told beside it, and the quantity whose formula hangs on it. */
export interface Decided {
  choice: string;
  by: string;
  formula: string;
  /** The cases that are told apart while the choice is open. */
  cases: string[];
}

export interface Layout {
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
