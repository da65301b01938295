import type { Experiment } from '../../generators/experiments/experiment.ts';
import type { AnswerRow } from '../../generators/marking/answers-file.ts';
import { type Entry, readEntry } from '../../generators/marking/entry.ts';
import { slipsOf } from '../../generators/marking/slipped.ts';
import type { Written } from '../../generators/quantities/step.ts';
import { round } from '../../generators/quantities/written.ts';
import type { Random } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import type { SimulatedClass } from './classes.ts';
import { workSheet } from './honest.ts';

/** How often an invented student slips; no source, chosen to be more than a teacher would see. */
const HABITS = { catalogue: 0.3, digit: 0.06, nearMiss: 0.04, leftBlank: 0.02 };

/** A class that works honestly, each student alone: slips of the catalogue, wrong digits, values a few per cent off, blanks. */
export function simulate(experiment: Experiment, { issues, columns }: SimulatedClass, random: Random): AnswerRow[] {
  return issues.map((issue, i) => {
    const program = programOf(experiment, issue.sheet);
    const all = program.steps.flatMap((step) => slipsOf(step).map((slip) => ({ at: step.id, slip })));
    const record = workSheet(program, issue.sheet, random, random.uniform() < HABITS.catalogue ? [random.pick(all)] : []);
    const texts = columns.map(({ id, row, unit }) => slippedText(record[id]![row]!, unit, random));
    return { row: i + 2, issue, texts, entries: texts.map((text) => readEntry(text, 'point')) };
  });
}

function slippedText(written: Written, unit: string, random: Random): string {
  const chance = random.uniform();
  if (chance < HABITS.leftBlank) return '-';
  if (chance < HABITS.leftBlank + HABITS.digit) return `${wrongDigit(written, random)} ${unit}`;
  if (chance < HABITS.leftBlank + HABITS.digit + HABITS.nearMiss) return `${round(Number(written) * (1 + random.between(-0.03, 0.03)), { figures: 3 }, 'even')} ${unit}`;
  return `${written} ${unit}`;
}

export function wrongDigit(written: Written, random: Random): Written {
  const [mantissa = '', exponent] = written.split('e');
  const places = [...mantissa].flatMap((sign, i) => (/\d/.test(sign) ? [i] : []));
  const place = random.pick(places);
  const changed = mantissa.slice(0, place) + random.integer(0, 9) + mantissa.slice(place + 1);
  return exponent === undefined ? changed : `${changed}e${exponent}`;
}

/** What student i would have written had so many answers been copied from j; of these some are altered by one in the last digit. */
export function plant(rows: readonly AnswerRow[], i: number, j: number, figures: number, altered: number, random: Random): { rows: AnswerRow[]; places: number[] } {
  const numbers = rows[j]!.entries.flatMap((entry, place) => (entry.is === 'number' ? [place] : []));
  const copied = random.shuffle(numbers).slice(0, figures);
  const entries = rows[i]!.entries.map((entry, place): Entry => (copied.includes(place) ? copy(rows[j]!.entries[place]!, copied.indexOf(place) < altered) : entry));
  return { rows: rows.map((row, k) => (k === i ? { ...row, entries } : row)), places: copied };
}

function copy(entry: Entry, altered: boolean): Entry {
  if (entry.is !== 'number' || !altered) return entry;
  const [mantissa = '', exponent] = entry.written.split('e');
  const last = Number(mantissa.at(-1));
  const changed = `${mantissa.slice(0, -1)}${last === 9 ? 8 : last + 1}`;
  return { ...entry, written: exponent === undefined ? changed : `${changed}e${exponent}` };
}
