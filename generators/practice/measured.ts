import type { Ask } from '../experiments/ask.ts';
import { type Setting, planResistance } from '../experiments/bridge-plan.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Readings } from '../quantities/evaluate.ts';
import { type Program, program } from '../quantities/program.ts';
import type { Reading, Step, Written } from '../quantities/step.ts';
import { inputsOf } from '../marking/slipped.ts';
import { faultOnInstrument } from '../sheets/instrument-marks.ts';
import type { Conventions, Sheet } from '../sheets/sheet.ts';
import { readNumber } from './check.ts';
import { type Place, placeKey, placesOf } from './places.ts';

/** What a student has typed of readings that were really taken, and what can be done with it. */
export interface Measured {
  /** Its readings where they are complete, ideal ones elsewhere, which nothing that is shown hangs on. */
  sheet: Sheet;
  steps: Program;
  /** Places whose readings are all the student's own. */
  places: Place[];
  /** Complete rows of each table, from its first. */
  rows: Record<string, number>;
  /** Readings that no instrument shows, by place, with the reason. */
  faults: Record<string, string>;
  /** Places where something stands that is no plain number. */
  unread: string[];
}

/** A table needs so many rows before a value is made from all of them. */
const FEWEST_ROWS = 2;

/** Takes what was typed by place, 'R:0', and the choices that readings decide; plain numbers alone count as readings. */
export function measured(experiment: Experiment, ask: Ask, conventions: Conventions, texts: Readonly<Record<string, string>>): Measured {
  const ideal = experiment.ideal(ask);
  const choices = Object.fromEntries((experiment.layout.decided ?? []).flatMap(({ choice }) => (texts[`form:${choice}`] ? [[choice, texts[`form:${choice}`]!]] : [])));
  const form = { ...ideal.form, ...choices };
  const steps = program(experiment.steps(form));
  const typed = (id: string, row: number) => plainNumber(texts[placeKey(id, row)] ?? '');
  const rows = tableRows(steps, typed);
  const readings: Readings = Object.fromEntries(Object.entries(ideal.readings).map(([id, values]) => [id, ownOrIdeal(steps.step(id), values, rows, typed)]));
  const sheet: Sheet = { format: 1, edition: experiment.edition, experiment: experiment.id, origin: 'measured', form, readings, conventions };
  const isOwn = (id: string): boolean => {
    const step = steps.step(id);
    if (step.kind === 'given' || step.kind === 'influence') return true;
    if (step.kind === 'reading') return step.per === undefined ? typed(id, 0) !== undefined : (rows[step.per] ?? 0) > 0;
    return (step.kind !== 'summary' || (rows[steps.step(step.of[0]!).per!] ?? 0) >= FEWEST_ROWS) && inputsOf(steps, step).every(isOwn);
  };
  const places = placesOf(steps, experiment.layout, sheet).filter(({ id }) => isOwn(id));
  return { sheet, steps, places, rows, faults: faultsOf(steps, readings, typed), unread: unreadIn(steps, texts) };
}

/** A reading as an instrument gives it: no power of ten, no unit of another size. */
function plainNumber(text: string): Written | undefined {
  const entry = readNumber(text);
  return entry.is === 'number' && entry.unit === undefined && !entry.written.includes('e') ? entry.written : undefined;
}

function unreadIn({ steps }: Program, texts: Readonly<Record<string, string>>): string[] {
  const readings = new Set(steps.filter(isReading).map(({ id }) => id));
  return Object.keys(texts).filter((key) => readings.has(key.split(':')[0]!) && texts[key]!.trim() !== '' && plainNumber(texts[key]!) === undefined);
}

const isReading = (step: Step): step is Reading => step.kind === 'reading';

function tableRows({ steps }: Program, typed: (id: string, row: number) => Written | undefined): Record<string, number> {
  const rows: Record<string, number> = {};
  for (const { per } of steps.filter(isReading)) {
    if (per === undefined || per in rows) continue;
    const columns = steps.filter(isReading).filter((step) => step.per === per);
    let count = 0;
    while (columns.every(({ id }) => typed(id, count) !== undefined)) count++;
    rows[per] = count;
  }
  return rows;
}

function ownOrIdeal({ id, per }: { id: string; per?: string }, ideal: Written | Written[], rows: Record<string, number>, typed: (id: string, row: number) => Written | undefined): Written | Written[] {
  if (per === undefined) return typed(id, 0) ?? ideal;
  const count = rows[per] ?? 0;
  return count === 0 ? ideal : Array.from({ length: count }, (_, row) => typed(id, row)!);
}

function faultsOf({ steps }: Program, readings: Readings, typed: (id: string, row: number) => Written | undefined): Record<string, string> {
  const faults: Record<string, string> = {};
  for (const { id, on } of steps.filter(isReading)) {
    for (let row = 0; ; row++) {
      const value = typed(id, row);
      if (value === undefined) break;
      const fault = faultOnInstrument(on, value, readings);
      if (fault !== undefined) faults[placeKey(id, row)] = fault;
    }
  }
  return faults;
}

/** The setting of the box to take next: its null point inside the window, and as far from the others as it can be. */
export function nextSetting(ask: Omit<Ask, 'wire'>, X: number, taken: readonly Written[], nulls: readonly number[]): Setting | undefined {
  const { usable } = planResistance(ask, X);
  const apart = ({ l }: Setting) => Math.min(...nulls.map((other) => Math.abs(other - l)), Math.abs(l - ask.window[0]), Math.abs(l - ask.window[1]));
  const left = usable.filter(({ R }) => !taken.some((each) => Number(each) === Number(R)));
  return left.reduce<Setting | undefined>((best, each) => (best === undefined || apart(each) > apart(best) ? each : best), undefined);
}
