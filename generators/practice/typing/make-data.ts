import type { Experiment } from '../../experiments/experiment.ts';
import type { Column } from '../../marking/columns.ts';
import type { Decimal } from '../../marking/entry.ts';
import { headOf } from '../../marking/heads.ts';
import type { Scheme } from '../../marking/scheme.ts';
import type { MarkingWords } from '../../marking/words.ts';
import type { Program } from '../../quantities/program.ts';
import { type Issue, programOf } from '../../sheets/issue.ts';
import type { TypingData } from './data.ts';

/** What a page for typing answers is made from. */
export interface Typing {
  experiment: Experiment;
  issues: readonly Issue[];
  columns: readonly Column[];
  scheme: Scheme;
  decimal: Decimal;
  symbols: Record<string, string>;
  words: MarkingWords;
}

/** The data of the page, and the programs whose formulas have to be made ready beside it. */
export function typingData({ experiment, issues, columns, scheme, decimal, symbols, words }: Typing): { data: TypingData; programs: Program[] } {
  const programs = listed<Program>((one) => one);
  const kinds = listed<TypingData['kinds'][number]>((one) => JSON.stringify(one));
  const sheets = issues.map(({ roll, name, code, sitting, sheet }) => {
    const { readings, finished: _, ...of } = sheet;
    return { roll, name, code, sitting, kind: kinds.place({ of, steps: programs.place(programOf(experiment, sheet)) }), readings };
  });
  const { heads, typing, unreadable, feedback, plain, slips } = words;
  const data: TypingData = {
    steps: programs.all.map(({ steps }) => steps.filter(({ kind }) => kind !== 'verdict')),
    kinds: kinds.all,
    sheets,
    columns: [...columns],
    rules: scheme,
    decimal,
    heads: [heads.roll, heads.name, heads.code, ...columns.map((column) => headOf(column, symbols, heads))],
    words: { heads, typing, unreadable, feedback, plain, slips },
  };
  return { data, programs: programs.all };
}

/** A list in which each thing stands once, told apart by a key. */
function listed<T>(keyOf: (one: T) => unknown) {
  const all: T[] = [];
  const places = new Map<unknown, number>();
  return {
    all,
    place(one: T): number {
      const key = keyOf(one);
      const place = places.get(key) ?? all.push(one) - 1;
      places.set(key, place);
      return place;
    },
  };
}
