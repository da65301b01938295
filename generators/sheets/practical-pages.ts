import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Exam } from '../order/exam.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, symbolLine } from '../quantities/working.ts';
import { round } from '../quantities/written.ts';
import { programOf } from './issue.ts';
import type { Batch } from './lots.ts';

/** A task of the examination on certain wires. */
export interface Combination {
  experiment: Experiment;
  /** Its heading and its aim, from content; what its slip says of the wires and of dangers of its own, where that differs from the rest. */
  words: { title: string; short: string; aim: string; slip?: { wires?: string; caution?: string } };
  ask: Ask;
  /** The wires as the order writes them. */
  wires: readonly string[];
}

export interface Candidate {
  roll: string;
  name: string;
}

type Lots = readonly Batch<Candidate, Combination>[];
export type Head = { for: string; marks: number };

/** The mark on a wire: A, B, … Z, then A1, B1, … */
export function marksOfWires(lots: Lots): Map<string, string> {
  const all = [...new Set(lots.flatMap(({ stations }) => stations.flatMap(({ combination }) => combination.wires)))].sort();
  const letter = (place: number) => String.fromCodePoint('A'.codePointAt(0)! + (place % 26)) + (place < 26 ? '' : String(Math.floor(place / 26)));
  return new Map(all.map((wire, place) => [wire, letter(place)]));
}

export const totalOf = (heads: readonly Head[]) => heads.reduce((sum, { marks }) => sum + marks, 0);

interface Printed {
  exam: Exam;
  lots: Lots;
  heads: readonly Head[];
  spoken: SpokenWords;
}

/** Slips to be cut out, one a station; with the candidate's name where the lots are drawn. */
export function slipsPage({ exam, lots, heads, spoken }: Printed): object {
  const marks = marksOfWires(lots);
  return {
    template: 'slips',
    foot: exam.title,
    minutes: String(exam.minutes),
    heads: heads.map((head) => `${head.for} ${head.marks}`).join(', '),
    total: String(totalOf(heads)),
    slips: lots.flatMap((batch) =>
      batch.stations.map((station) => {
        const { experiment, words, ask, wires } = station.combination;
        const drawn = batch.lots.find((lot) => lot.station === station)!.candidate;
        return {
          batch: String(batch.number),
          station: String(station.number),
          title: words.title,
          aim: words.aim,
          own: words.slip ?? {},
          blanks: symbolsOf(experiment, ask, spoken),
          wires: wires.map((wire) => marks.get(wire)!).join(', '),
          several: wires.length > 1,
          rows: String(ask.rows),
          low: String(ask.window[0]),
          high: String(ask.window[1]),
          ...(exam.draw === 'beforehand' && { candidate: drawn }),
        };
      }),
    ),
  };
}

function symbolsOf(experiment: Experiment, ask: Ask, spoken: SpokenWords): Record<string, Line> {
  const program = programOf(experiment, { form: experiment.ideal(ask).form });
  return Object.fromEntries(program.steps.filter(({ kind }) => kind !== 'verdict').map(({ id }) => [id, symbolLine(program, id, spoken)]));
}

/** What stands where, for whoever sets the laboratory up. */
export function stationsPage({ exam, lots }: Printed): object {
  const marks = marksOfWires(lots);
  const pieces = (wire: string) => Math.max(...lots.map(({ stations }) => stations.filter(({ combination }) => combination.wires.includes(wire)).length));
  return {
    template: 'stations',
    foot: exam.title,
    title: exam.title,
    wires: [...marks].map(([wire, mark]) => ({ mark, wire, pieces: pieces(wire) })),
    batches: lots.map(({ number, stations }) => ({
      number: String(number),
      stations: stations.map(({ number: place, combination: { words, wires, ask, experiment } }) => ({
        number: place,
        title: words.short,
        wires: wires.map((wire) => marks.get(wire)!).join(', '),
        box: ask.bench.box.plugs.join(' '),
        expected: experiment.plan(ask).balances.map(({ of, X }) => `${of === undefined ? '' : `${of}: `}${round(X, { figures: 3 }, 'even')}`).join(', '),
      })),
    })),
  };
}

/** The examiner's sheet of one batch, a row for each candidate. */
export function awardPages({ exam, lots, heads }: Printed, fields: Record<string, string>): object[] {
  return lots.map((batch) => ({
    template: 'award',
    foot: exam.title,
    title: exam.title,
    batch: String(batch.number),
    fields,
    heads: heads.map((head) => ({ for: head.for, marks: String(head.marks) })),
    total: String(totalOf(heads)),
    rows: batch.lots.map(({ candidate, station }) => ({ ...candidate, station: exam.draw === 'beforehand' ? String(station.number) : '' })),
  }));
}
