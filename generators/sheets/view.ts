import type { Experiment } from '../experiments/experiment.ts';
import type { Layout } from '../experiments/layout.ts';
import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Computed } from '../quantities/step.ts';
import { type Line, formulaLine, quantityLine, symbolLine } from '../quantities/working.ts';
import { type FinishedView, finishedView } from './finished-view.ts';
import { openForm } from './open-form.ts';
import { type RecordBlock, type RowLabel, labelIn, readingsShown, record, unitLine } from './record.ts';
import type { Sheet } from './sheet.ts';
import { type WorkedStep, computedStep, resultLines, workedSteps } from './worked-steps.ts';
import type { Worked } from './worked.ts';

/** What a worksheet's template receives of the sheet: nothing that has been worked out. */
export interface WorksheetView {
  form: Record<string, string>;
  symbols: Record<string, Line>;
  formulas: Record<string, Line>;
  givens: Record<string, Line>;
  observations: RecordBlock[];
  /** The choices that readings decide, by the reading. */
  decided: Record<string, string>;
  /** The formula of an undecided choice in each of its cases, by the choice. */
  cases: Record<string, Record<string, Line>>;
  working: Room[];
  /** The units of the results, each beside a blank. */
  results: Record<string, { unit: Line }>;
  /** What the imaginary student wrote, where the sheet is a record to be corrected. */
  finished?: FinishedView;
}

/** A place for a student's working. */
export interface Room {
  id: string;
  formula: Line;
  /** Lines of writing that the working takes. */
  lines: number;
  /** A single value that no result states: it and its unit. */
  answer?: { symbol: Line; unit: Line };
}

/** What the key and the solution copy receive besides. */
export interface KeyView extends Omit<WorksheetView, 'working' | 'results' | 'cases' | 'finished'> {
  working: WorkedStep[];
  results: Record<string, Line>;
  verdicts: { id: string; said: { label?: RowLabel; choice: string }[] }[];
}

/** The view of a worksheet; with `blank` readings the tables are empty, for a real session. */
export function worksheetView(sheet: Sheet, program: Program, experiment: Experiment, words: SpokenWords, blank = false): WorksheetView {
  const { layout } = experiment;
  const shown = readingsShown(program, sheet, blank);
  const { form, cases, undecided } = openForm(experiment, sheet, (id) => shown.values(id) !== undefined, words);
  return {
    ...common(sheet, program, layout, words, undecided),
    form,
    cases,
    observations: record(layout.observations, program, shown, words, [...layout.working, ...undecided]),
    working: layout.working.map((id) => room(program, computedStep(program, id), layout.result, words)),
    results: Object.fromEntries(layout.result.map((id) => [id, { unit: unitLine(program.step(id).unit, words) }])),
    ...(sheet.finished && { finished: finishedView({ ...sheet, finished: sheet.finished }, program, layout, words) }),
  };
}

/** A line to put the numbers in and one for what follows; one more for specimen rows, or for conversions to SI units. */
function room(program: Program, step: Computed, results: readonly string[], words: SpokenWords): Room {
  const long = step.per !== undefined || (step.kind === 'relation' && step.si === true);
  return {
    id: step.id,
    formula: formulaLine(program, step, words),
    lines: long ? 3 : 2,
    ...(step.per || results.includes(step.id) ? {} : { answer: { symbol: symbolLine(program, step.id, words), unit: unitLine(step.unit, words) } }),
  };
}

/** The view of a key: the same sheet filled in, with its working. */
export function keyView(sheet: Sheet, worked: Worked, layout: Layout, words: SpokenWords): KeyView {
  const { program, values, verdicts } = worked;
  const choices = verdicts();
  const shown = { ...readingsShown(program, sheet, false), values: (id: string) => values.written.get(id), choices: (id: string) => choices[id]! };
  return {
    ...common(sheet, program, layout, words),
    observations: record(layout.observations, program, shown, words, layout.working),
    working: workedSteps(program, layout, values, words),
    results: resultLines(program, layout, values, words),
    verdicts: saidOf(program, layout, choices),
  };
}

/** What each verdict says that no table shows; by rows, as their table calls them, where it belongs to one. */
function saidOf(program: Program, { observations }: Layout, verdicts: Record<string, string[]>): KeyView['verdicts'] {
  const inTables = observations.flatMap((block) => ('table' in block && block.verdict !== undefined ? [block.verdict] : []));
  return Object.entries(verdicts).filter(([id]) => !inTables.includes(id)).map(([id, choices]) => {
    const step = program.steps.find((each) => each.id === id)!;
    const per = step.kind === 'verdict' ? step.per : undefined;
    return { id, said: choices.map((choice, row) => ({ ...(per !== undefined && { label: labelIn(observations, per, row) }), choice })) };
  });
}

function common(sheet: Sheet, program: Program, { decided = [] }: Layout, words: SpokenWords, undecided: readonly string[] = []): Pick<WorksheetView, 'form' | 'symbols' | 'formulas' | 'givens' | 'decided'> {
  const quantities = program.steps.filter((step) => step.kind !== 'verdict');
  return {
    form: sheet.form,
    decided: Object.fromEntries(decided.map(({ by, choice }) => [by, choice])),
    symbols: Object.fromEntries(quantities.map(({ id }) => [id, symbolLine(program, id, words)])),
    formulas: Object.fromEntries(quantities.filter(isComputed).filter(({ id }) => !undecided.includes(id)).map((step) => [step.id, formulaLine(program, step, words)])),
    givens: Object.fromEntries(
      quantities.filter(({ kind }) => kind === 'given').map(({ id, unit }) => [id, quantityLine([sheet.readings[id]!].flat()[0]!, unit, words)]),
    ),
  };
}

const isComputed = (step: { kind: string }): step is Computed => step.kind === 'relation' || step.kind === 'summary';
