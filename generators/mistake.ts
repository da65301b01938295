/** Where a mistake stands: a file, and inside it a row and a field. */
export interface Place {
  file?: string;
  row?: number;
  field?: string;
}

/** One thing that a user can put right: what is wrong, with which value, and what to do. */
export interface Mistake extends Place {
  /** A sentence without its place: 'roll 7 appears twice (first in row 8); give one of them another number'. */
  what: string;
}

/** All the mistakes found in what the user gave; shown without a stack, exit code 1. */
export class UserMistake extends Error {
  override readonly name = 'UserMistake';
  readonly mistakes: readonly Mistake[];

  constructor(mistakes: readonly Mistake[] | string, options?: ErrorOptions) {
    const list = typeof mistakes === 'string' ? [{ what: mistakes }] : mistakes;
    super(list.map(inWords).join('\n'), options);
    this.mistakes = list;
  }
}

function inWords({ file, row, field, what }: Mistake): string {
  const place = [file, row === undefined ? undefined : `row ${row}`, field].filter((part) => part !== undefined);
  return place.length === 0 ? what : `${place.join(', ')}: ${what}`;
}
