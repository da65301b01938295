import type { Column } from '../../marking/columns.ts';
import type { Decimal } from '../../marking/entry.ts';
import type { Rules } from '../../marking/scheme.ts';
import type { MarkingWords } from '../../marking/words.ts';
import type { Step } from '../../quantities/step.ts';
import type { Sheet } from '../../sheets/sheet.ts';

/** A sheet as the page has it: its readings, and which of the kinds of sheets it is. No truth, no secret, no wire. */
export interface TypingSheet extends Pick<Sheet, 'readings'> {
  roll: string;
  name: string;
  code: string;
  sitting: number;
  kind: number;
}

/** All that the page for typing answers works with, as JSON. */
export interface TypingData {
  /** The steps of each form, verdicts left out, since no answers file has them. */
  steps: Step[][];
  /** What sheets have in common besides, each with the place of its steps. */
  kinds: { of: Omit<Sheet, 'readings' | 'finished'>; steps: number }[];
  sheets: TypingSheet[];
  columns: Column[];
  rules: Rules;
  decimal: Decimal;
  /** Of the answers file: roll, name, code, then the answers. */
  heads: string[];
  words: TypingWords;
}

export type TypingWords = Pick<MarkingWords, 'heads' | 'typing' | 'unreadable' | 'feedback' | 'plain' | 'slips'>;
