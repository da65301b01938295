import { csvText } from '../../marking/csv-text.ts';
import { readEntry } from '../../marking/entry.ts';
import type { TypingData } from './data.ts';
import { keepTyped, typedBefore } from './kept.ts';

/** What was typed for every sheet. */
export interface AnswerBook {
  /** One text an answer; '' for what is not entered. */
  texts(place: number): readonly string[];
  /** Whether the browser keeps it beyond this visit. */
  write(place: number, answer: number, text: string): boolean;
  /** Whether every answer is entered, and can be read. */
  isComplete(place: number): boolean;
  /** The places of the sheets with an answer that cannot be read, once for each such answer. */
  unreadable(): number[];
  /** The answers file, as `slidewire mark` takes it. */
  csv(): string;
}

export function answerBook({ sheets, columns, heads, decimal }: TypingData): AnswerBook {
  const keys = columns.map(({ id, row }) => `${id}:${row}`);
  const typed = sheets.map(({ code }) => {
    const before = typedBefore(code);
    return keys.map((key) => String(before[key] ?? ''));
  });
  const kindOf = (text: string) => readEntry(text, decimal).is;
  const completeness = (texts: readonly string[]) => texts.every((text) => !['not entered', 'unreadable'].includes(kindOf(text)));
  const complete = typed.map(completeness);
  return {
    texts: (place) => typed[place]!,
    write(place, answer, text) {
      typed[place]![answer] = text;
      complete[place] = completeness(typed[place]!);
      return keepTyped(sheets[place]!.code, Object.fromEntries(keys.map((key, i) => [key, typed[place]![i]!])));
    },
    isComplete: (place) => complete[place]!,
    unreadable: () => typed.flatMap((texts, place) => texts.filter((text) => kindOf(text) === 'unreadable').map(() => place)),
    csv: () => csvText([heads, ...sheets.map(({ roll, name, code }, place) => [roll, name, code, ...typed[place]!])], decimal),
  };
}
