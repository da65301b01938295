import { type SheetMarks, award } from '../../marking/award.ts';
import { readEntry } from '../../marking/entry.ts';
import { judge } from '../../marking/judge.ts';
import { type Standing, standings } from '../../marking/standing.ts';
import { type Program, program } from '../../quantities/program.ts';
import type { Sheet } from '../../sheets/sheet.ts';
import type { TypingData } from './data.ts';

/** A sheet that is judged and marked, as `slidewire mark` does it, and how each answer stands. */
export interface Look extends SheetMarks {
  standings: Standing[];
}

/** Judges one sheet after the other; a form's steps are checked when its first sheet is shown. */
export function looker({ steps, kinds, sheets, columns, rules, decimal }: TypingData): (place: number, texts: readonly string[]) => Look {
  const programs: (Program | undefined)[] = [];
  return (place, texts) => {
    const { kind, readings } = sheets[place]!;
    const { of, steps: form } = kinds[kind]!;
    const ready = (programs[form] ??= program(steps[form]!));
    const sheet: Sheet = { ...of, readings };
    const marks = award(judge(sheet, ready, columns, texts.map((text) => readEntry(text, decimal))), rules);
    return { ...marks, standings: standings(sheet, ready, marks.answers) };
  };
}
