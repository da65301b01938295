import { circuits } from '../../experiments/circuits.ts';
import type { Experiment } from '../../experiments/experiment.ts';
import { orderFromFlags } from '../../order/read-order.ts';
import type { Order } from '../../order/schema.ts';
import type { MarkingWords } from '../../marking/words.ts';
import type { StudentBench } from '../../practice/bench.ts';
import { type Fillings, type ReadySentences, fillings } from '../../practice/fillings.ts';
import type { Kit } from '../../practice/kit.ts';
import { type PracticeSet, makeSet } from '../../practice/make-set.ts';
import { placesOf } from '../../practice/places.ts';
import { recordSlots } from '../../practice/record-slots.ts';
import { benchOf } from '../../practice/set-bench.ts';
import { ruleBench } from '../../practice/rule.ts';
import { gaugeBench } from '../../practice/screw-gauge.ts';
import { setCode } from '../../practice/set-code.ts';
import { evaluate } from '../../quantities/evaluate.ts';
import type { Program } from '../../quantities/program.ts';
import { conventions } from '../../sheets/conventions.ts';
import { programOf } from '../../sheets/issue.ts';
import { type WorksheetPage, worksheetPage } from '../../sheets/pages.ts';
import { type Tables, askFor } from '../../sheets/tables.ts';
import { type Words, knownNames } from '../content.ts';
import { mistakeWords } from './page-words.ts';
import { prose } from './site-templates.ts';

/** The set that a page shows where no address names one, and without scripts. */
export const DEFAULT_SET = setCode(1);
/** Sets that are looked at for what hangs on the set: forms of the steps, negative values, powers of ten. */
const SAMPLES = 60;

/** Everything of one experiment's page. */
export interface PracticePage {
  experiment: Experiment;
  words: Words;
  kit: Kit;
  /** Steps in every form that sets have. */
  programs: Program[];
  ready: ReadySentences;
  /** The default set as a worksheet shows it, and what fills its slots. */
  page: WorksheetPage;
  slots: Fillings;
  /** Quantities that can be negative, and those that are written with a power of ten. */
  signed: string[];
  scientific: string[];
  /** The record comes filled in, for its mistakes to be found. */
  isFinished: boolean;
  /** Its readings can be taken on the bench in the page; what stands on it is of the set that the page comes with. */
  hasBench: boolean;
  bench?: StudentBench;
  /** So can those of its screw gauge. */
  hasGauge: boolean;
  /** So can the length of its wire, on a rule. */
  hasRule: boolean;
}

/** The page of an experiment; marking has the words for the slips, which the key of a record with mistakes names. */
export function practicePage(experiment: Experiment, tables: Tables, words: Words, marking: Pick<MarkingWords, 'slips'>): PracticePage {
  const order = orderFromFlags({ experiment: experiment.id, seed: 'practice' }, knownNames(tables));
  const kit = makeKit(order, experiment, tables);
  const sets = Array.from({ length: SAMPLES }, (_, i) => makeSet(experiment, kit, setCode(i)));
  const programs = [...new Set([...sets.map(({ sheet }) => sheet.form), ...decidedForms(experiment, sets)].map((form) => programOf(experiment, { form })))];
  const first = makeSet(experiment, kit, DEFAULT_SET);
  const pageOf = (set: PracticeSet) => worksheet(set, order, experiment, words);
  const page = pageOf(first);
  const { finished } = first.sheet;
  const steps = programOf(experiment, first.sheet);
  // The readings of a finished record are not in question.
  const bench = finished ? undefined : benchOf(experiment, first);
  const ready = sentences(experiment, kit, words, page, (wire) => pageOf({ ...first, ask: { ...kit.ask, wire: kit.wires[wire]!, others: [] } }));
  return {
    experiment,
    words,
    kit,
    programs,
    ready,
    page,
    isFinished: finished !== undefined,
    hasRule: !finished && ruleBench(steps, first) !== undefined,
    hasGauge: !finished && gaugeBench(steps, first) !== undefined,
    hasBench: bench !== undefined,
    ...(bench && { bench }),
    slots: { ...fillings(first, steps, experiment.layout, ready, words.spoken), ...(finished && recordSlots({ ...first.sheet, finished }, steps, experiment.layout, words.spoken, mistakeWords(marking, words.sheet))) },
    ...kindsOfNumbers(experiment, sets),
  };
}

function makeKit(order: Order, experiment: Experiment, tables: Tables): Kit {
  const asks = order.wires.map((_, i) => askFor(order, [order.wires[i]!, ...order.wires.filter((__, other) => other !== i).slice(0, experiment.wires - 1)], tables));
  const { wire: _, others: __, ...ask } = asks[0]!;
  const kit: Kit = { experiment: experiment.id, wires: asks.map(({ wire }) => wire), ask, conventions: { ties: order.rounding, tables: order.tables, drawn: {}, limits: {}, halfWidths: {} } };
  const { sheet } = makeSet(experiment, kit, DEFAULT_SET);
  return { ...kit, conventions: conventions(order, asks[0]!, experiment, programOf(experiment, sheet).steps) };
}

/** Forms that the cases of a decided choice would give, whether or not a sample has them. */
function decidedForms({ layout }: Experiment, [first]: PracticeSet[]): Record<string, string>[] {
  return (layout.decided ?? []).flatMap(({ choice, cases }) => [...cases, 'none'].map((one) => ({ ...first!.sheet.form, [choice]: one })));
}

function worksheet(set: PracticeSet, order: Order, experiment: Experiment, words: Words): WorksheetPage {
  const circuit = experiment.layout.circuit && circuits[experiment.layout.circuit]({ id: 'circuit', known: set.ask.known, symbol: 'rectangle', named: true }, words.figures);
  const issue = { sheet: set.sheet, roll: '', name: '', code: set.code };
  const pageWords = { spoken: words.spoken, known: words.experiment.known, figures: words.figures, graphs: words.experiment.graphs ?? {} };
  return worksheetPage({ issue, order, ask: set.ask, words: pageWords, ...(circuit !== undefined && { circuit }), place: 0 }, programOf(experiment, set.sheet), experiment);
}

/** Sentences with their formulas set: a page has no reader of content. */
function sentences(experiment: Experiment, kit: Kit, words: Words, page: WorksheetPage, ofWire: (wire: number) => WorksheetPage): ReadySentences {
  const own = words.experiment as Record<string, unknown>;
  const sample = own['sample'] as string | undefined;
  const decided = (experiment.layout.decided ?? []).map(({ choice }) => choice);
  const cases = (of: unknown, blanks: WorksheetPage['blanks']) =>
    Object.fromEntries(Object.entries((of ?? {}) as Record<string, string>).filter(([name]) => name !== 'open').map(([name, sentence]) => [name, prose(sentence, blanks)]));
  const verdicts = (own['verdicts'] ?? {}) as Record<string, unknown>;
  return {
    samples: kit.wires.map((_, wire) => (sample === undefined ? '' : prose(sample, ofWire(wire).blanks))),
    forms: Object.fromEntries(decided.map((choice) => [choice, cases(own[choice], page.blanks)])),
    verdicts: Object.fromEntries(Object.entries(verdicts).map(([id, choices]) => [id, cases(choices, page.blanks)])),
  };
}

function kindsOfNumbers(experiment: Experiment, sets: readonly PracticeSet[]): Pick<PracticePage, 'signed' | 'scientific'> {
  const having = (mark: (written: string) => boolean) => {
    const found = new Set<string>();
    for (const { sheet } of sets) {
      const program = programOf(experiment, sheet);
      const { written } = evaluate(program, sheet.readings, sheet.conventions.ties);
      for (const { id } of placesOf(program, experiment.layout, sheet)) if (written.get(id)!.some(mark)) found.add(id);
    }
    return [...found];
  };
  return { signed: having((written) => written.startsWith('-')), scientific: having((written) => written.includes('e')) };
}
