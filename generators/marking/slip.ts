/** What can have gone wrong, by a name that content has words for. */
export interface Explanation {
  /** A slip of the catalogue, by its id; or one that any number can suffer. */
  slip: string;
  /** The step where it was made. */
  at: string;
  /** Of a table: the row, counted from 1, where it is one row alone. */
  row?: number;
  /** Of a power of ten: how many places the point has moved. */
  places?: number;
  /** A second slip that is needed beside this one. */
  with?: { slip: string; at: string };
}

/** Slips that any number can suffer, whatever it is worked from. */
export const PLAIN_SLIPS = [
  'sign lost',
  'power of ten',
  'unit beside the number',
  'rounded too far',
  'cut off',
  'digits transposed',
  'row of the table',
  'row left out',
  'wrong count of rows',
  'borrow in a difference',
] as const;
export type PlainSlip = (typeof PLAIN_SLIPS)[number];
