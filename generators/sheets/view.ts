import type { Layout } from '../experiments/layout.ts';
import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Computed } from '../quantities/step.ts';
import { type Line, conversionLines, formulaLine, quantityLine, symbolLine, workedLine } from '../quantities/working.ts';
import { type RecordBlock, readingsShown, record, unitLine } from './record.ts';
import type { Sheet } from './sheet.ts';
import type { Worked } from './worked.ts';

/** What a worksheet's template receives of the sheet: nothing that has been worked out. */
export interface WorksheetView {
  form: Record<string, string>;
  symbols: Record<string, Line>;
  formulas: Record<string, Line>;
  givens: Record<string, Line>;
  observations: RecordBlock[];
  working: { id: string; formula: Line }[];
  /** The units of the results, each beside a blank. */
  results: Record<string, { unit: Line }>;
}

/** What the key and the solution copy receive besides. */
export interface KeyView extends Omit<WorksheetView, 'working' | 'results'> {
  working: { id: string; rows: { row?: number; lines: Line[] }[]; formula: Line }[];
  results: Record<string, Line>;
  verdicts: Record<string, string>;
}

/** The view of a worksheet; with `blank` readings the tables are empty, for a real session. */
export function worksheetView(sheet: Sheet, program: Program, layout: Layout, words: SpokenWords, blank = false): WorksheetView {
  const shown = readingsShown(program, sheet, blank);
  return {
    ...common(sheet, program, words),
    observations: record(layout.observations, program, shown, words),
    working: layout.working.map((id) => ({ id, formula: formulaLine(program, computed(program, id), words) })),
    results: Object.fromEntries(layout.result.map((id) => [id, { unit: unitLine(program.step(id).unit, words) }])),
  };
}

/** The view of a key: the same sheet filled in, with its working. */
export function keyView(sheet: Sheet, worked: Worked, layout: Layout, words: SpokenWords): KeyView {
  const { program, values, verdicts } = worked;
  const shown = { ...readingsShown(program, sheet, false), values: (id: string) => values.written.get(id) };
  return {
    ...common(sheet, program, words),
    observations: record(layout.observations, program, shown, words),
    working: layout.working.map((id) => {
      const step = computed(program, id);
      const count = values.written.get(id)!.length;
      const rows = Array.from({ length: count }, (_, row) => ({
        ...(step.per ? { row: row + 1 } : {}),
        lines: [
          ...(step.kind === 'relation' && !step.per ? conversionLines(program, step, values, words) : []),
          workedLine(program, step, row, values, words),
        ],
      }));
      return { id, rows, formula: formulaLine(program, step, words) };
    }),
    results: Object.fromEntries(layout.result.map((id) => [id, quantityLine(values.written.get(id)![0]!, program.step(id).unit, words)])),
    verdicts,
  };
}

function common(sheet: Sheet, program: Program, words: SpokenWords): Pick<WorksheetView, 'form' | 'symbols' | 'formulas' | 'givens'> {
  const quantities = program.steps.filter((step) => step.kind !== 'verdict');
  return {
    form: sheet.form,
    symbols: Object.fromEntries(quantities.map(({ id }) => [id, symbolLine(program, id, words)])),
    formulas: Object.fromEntries(quantities.filter(isComputed).map((step) => [step.id, formulaLine(program, step, words)])),
    givens: Object.fromEntries(
      quantities.filter(({ kind }) => kind === 'given').map(({ id, unit }) => [id, quantityLine([sheet.readings[id]!].flat()[0]!, unit, words)]),
    ),
  };
}

const isComputed = (step: { kind: string }): step is Computed => step.kind === 'relation' || step.kind === 'summary';

function computed(program: Program, id: string): Computed {
  const step = program.step(id);
  if (!isComputed(step)) throw new Error(`${id} is not worked out, so it has no working`);
  return step;
}
