import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Shows, Taken } from '../experiments/on-bench.ts';
import type { Program } from '../quantities/program.ts';
import type { Reading, Written } from '../quantities/step.ts';
import { type Setting, type StudentBench, faulty, shown } from './bench.ts';
import { readNumber } from './check.ts';
import type { PracticeSet } from './make-set.ts';
import { placeKey } from './places.ts';

/** The bench of a set: the very apparatus that its readings were taken on, sound or with a fault. Nothing where there are none to be taken: they are drawn, or given. */
export function benchOf({ bench, readingsGiven }: Pick<Experiment, 'bench' | 'readingsGiven'>, { ask, streams, truth, sheet }: PracticeSet, isFaulty = false): StudentBench | undefined {
  if (!bench || readingsGiven) return undefined;
  const laid = bench(ask, streams, truth);
  if (laid.pairs.some(({ taken }) => taken.some(({ reads }) => Object.keys(reads).some((id) => id in sheet.conventions.drawn)))) return undefined;
  const sound: StudentBench = { laid, sizes: ask.bench };
  return isFaulty ? faulty(sound, streams.of('fault')) : sound;
}

/** A place in the student's own table that what stands on the bench can be written to. */
export interface Target {
  taken: Taken;
  table: string;
  row: number;
}

/** The rows of the tables that are taken with what is in the gaps now; none where no table asks for it. */
export function targets({ laid: { pairs } }: StudentBench, { pair, firstIn }: Pick<Setting, 'pair' | 'firstIn'>, steps: Program, { sheet }: PracticeSet): Target[] {
  return pairs[pair]!.taken
    .filter((taken) => taken.firstIn === firstIn)
    .flatMap((taken) => {
      const scale = Object.keys(taken.reads).find((id) => taken.reads[id] === 'scale')!;
      const { per } = steps.step(scale) as Reading;
      return [sheet.readings[scale]!].flat().map((_, row) => ({ taken, table: per!, row }));
    });
}

/** The key of a reading in a row: single readings have one place for all rows. */
export const keyIn = (steps: Program, id: string, row: number) => placeKey(id, steps.step(id).per === undefined ? 0 : row);

/** How far in its own unit a reading may lie from what is shown: the box is read exactly, a scale to a division. */
const LATITUDE: Partial<Record<Shows, number>> = { scale: 0.1, rule: 0.1, thermometer: 1 };

/** What a student wrote of an instrument, with the digits that it gives; nothing where the instrument shows something else. */
export function asShown(bench: StudentBench, setting: Setting, by: Shows, text: string): Written | undefined {
  const exact = shown(bench, setting, by);
  const entry = readNumber(text);
  if (entry.is !== 'number' || Math.abs(Number(entry.written) - Number(exact)) > (LATITUDE[by] ?? 0) + 1e-9) return undefined;
  const { length = 0 } = exact.split('.')[1] ?? '';
  const [whole, decimals = ''] = entry.written.split('.') as [string, string?];
  return decimals.length > length ? exact : length === 0 ? whole : `${whole}.${decimals.padEnd(length, '0')}`;
}

/** Whether a null point lies where the experiment wants none, so that it is worth a remark. */
export function isOutside({ window: [low, high] }: Pick<Ask, 'window'>, { layout: { offWindow = [] } }: Pick<Experiment, 'layout'>, id: string, l: Written): boolean {
  return !offWindow.includes(id) && (Number(l) < low || Number(l) > high);
}

/** The set with the student's own readings in place of those that were printed, by place: 'R:0'. */
export function withOwnReadings(set: PracticeSet, own: Readonly<Record<string, string>>): PracticeSet {
  const { sheet } = set;
  const readings = Object.entries(sheet.readings).map(([id, printed]) => {
    const column = [printed].flat().map((each, row) => own[`${id}:${row}`] ?? each);
    return [id, Array.isArray(printed) ? column : column[0]!] as const;
  });
  return { ...set, sheet: { ...sheet, readings: Object.fromEntries(readings) } };
}
