import { slipsOf } from '../marking/slipped.ts';
import { type Finished, WRITING, faultsIn } from '../quantities/finished.ts';
import type { Program } from '../quantities/program.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { type Answer, checkAll } from './check.ts';
import { type Place, placeKey } from './places.ts';

/** A sheet with a record that comes filled in, for its mistakes to be found. */
export type FinishedSheet = Sheet & { finished: Finished };

/** What stands in such a record, by place. */
export function writtenIn(finished: Finished, places: readonly Place[]): Record<string, string> {
  return Object.fromEntries(places.map(({ id, row, key }) => [key, finished[id]![row]!]));
}

/** The mistakes that can be made at a step: its slips, and those of writing and reckoning. */
export const mistakesAt = (program: Program, id: string): string[] => [...slipsOf(program.step(id)).map((slip) => slip.id), ...WRITING];

/** The mistakes of a record by place, each under every name that gives what stands there. */
export function mistakesIn(sheet: FinishedSheet, program: Program, places: readonly Place[]): Map<string, string[]> {
  const answers = checkAll(sheet, program, places, writtenIn(sheet.finished, places));
  const fitting = (key: string, id: string) => {
    const answer = answers[places.findIndex((place) => place.key === key)]!;
    return answer.is === 'wrong' ? answer.explanations.filter((each) => each.at === id && !each.with).map(({ slip }) => slip) : [];
  };
  return new Map(faultsIn(program, sheet.readings, sheet.conventions, sheet.finished).map(({ id, row, slip }) => [placeKey(id, row), [slip, ...fitting(placeKey(id, row), id)]]));
}

const RIGHT: Answer = { is: 'right', byTheKey: false, extraFigures: 0, wrongUnit: false };
const WRONG: Answer = { is: 'wrong', explanations: [], wrongUnit: false };

/** What is known of a place once the student has said whether what stands there follows or is a mistake. */
export function judgedAs(said: string, isMistake: boolean): Answer {
  if (said === '') return { is: 'empty' };
  return (said === 'mistake') === isMistake ? RIGHT : WRONG;
}

/**
 * Judges the value that should stand at a place. It may be worked from the record as it stands, from the record with what
 * the student has put right before, or be that of a record that is right throughout.
 */
export function judgeInstead(sheet: FinishedSheet, program: Program, places: readonly Place[], corrected: Readonly<Record<string, string>>, { key }: Place): Answer {
  const text = corrected[key] ?? '';
  const record = writtenIn(sheet.finished, places);
  const before = Object.fromEntries(Object.entries(corrected).filter(([, each]) => each !== ''));
  const at = places.findIndex((place) => place.key === key);
  const [asItStands, putRight] = [record, { ...record, ...before }].map((texts) => checkAll(sheet, program, places, { ...texts, [key]: text })[at]!);
  const answer = putRight!.is === 'right' ? putRight! : asItStands!;
  if (answer.is !== 'right') return answer;
  // What stands there can be the key's value by chance; it is still what the mistake gave.
  if (answer.byTheKey && Number(text) === Number(record[key])) return WRONG;
  return { ...answer, byTheKey: false };
}
