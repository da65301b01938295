/** A decimal number as it stands on paper, digits kept: '43.2', '0.60', '-0.03', '4.97e-7'. */
export type Written = string;

/** How many digits an answer is written with. */
export type Digits = { decimals: number } | { figures: number };

/** A closed interval, low ≤ high. */
export type Interval = readonly [low: number, high: number];

interface Quantity {
  /** A name that mathjs reads as a symbol: 'R', 'l', 'rho'. */
  id: string;
  /** How it is written, in TeX: '\\rho'. */
  tex: string;
  /** A key of units.ts, 'Ω', 'cm', 'mm', 'Ω m', '' for a pure number. */
  unit: string;
  /** The table whose every row holds one value; without it there is one value a sheet. */
  per?: string;
}

/** What an instrument shows, with the digits it gives. */
export interface Reading extends Quantity {
  kind: 'reading';
  /** The instrument that it is read on: what it may be off by, and how it is drawn, goes by that. */
  on?: Instrument;
}

/** Instruments of the practical; the screw gauge is three: its two scales on the wire, and its circular scale on closed jaws. */
export type Instrument = 'box' | 'scale' | 'main scale' | 'circular scale' | 'closed jaws' | 'rule' | 'thermometer' | 'galvanometer';

/** A number that is exact by agreement or printed for the student: the length of the bridge wire, a table value. */
export interface Given extends Quantity {
  kind: 'given';
}

/**
 * A correction whose estimate is zero but which is not known to be zero, the same for all rows:
 * the error of the resistance box, an end correction (JCGM 100:2008, 4.1 and 4.3).
 */
export interface Influence extends Quantity {
  kind: 'influence';
}

/** A mistake with a recognisable value: another expression on the same quantities. */
export interface Slip {
  id: string;
  as: string;
  /** The quantity that was put in without its change of units, where that is the slip. */
  unconverted?: string;
}

/** Another honest way to the same value: lines in between, each rounded, then the last expression. */
export interface Route {
  id: string;
  via: { id: string; as: string; digits: Digits }[];
  as: string;
}

/** One formula. In `si` relations every quantity is converted to SI units first, in sight of the reader. */
export interface Relation extends Quantity {
  kind: 'relation';
  as: string;
  si?: true;
  /** The same formula with its influences in place; equal to `as` where they are zero. */
  model?: string;
  digits: Digits;
  routes?: Route[];
  slips?: Slip[];
}

/** One value from a whole table: the mean of a column, or the line y = slope · x + intercept through two, its intercept free or held at zero. */
export interface Summary extends Quantity {
  kind: 'summary';
  by: 'mean' | 'slope' | 'intercept' | 'slope through origin';
  /** One column for a mean; x and y for a line. */
  of: string[];
  digits: Digits;
  slips?: Slip[];
  /** The student reads it off a graph: a line that was laid by eye is honest too. */
  byEye?: true;
  /** Of a mean: the influence that stands for the resolution of its column, left out where the scatter of the rows holds it already. */
  resolution?: string;
}

/**
 * A choice with a reason; the words for each choice are content. With `per` one for every row of that table. It may look at
 * values, at the maximum permissible error (`worst`) and at the half-width of the 95 % interval (`expanded`; one value a sheet).
 */
export interface Verdict {
  kind: 'verdict';
  id: string;
  per?: string;
  choices: string[];
  decide(on: { value(id: string): number; rows(id: string): number[]; worst(id: string): number; expanded(id: string): number }): string;
}

export type Input = Reading | Given | Influence;
export type Computed = Relation | Summary;
export type Step = Input | Computed | Verdict;
