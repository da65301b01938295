import type { Side } from '../apparatus/bridge.ts';
import type { Ask } from '../experiments/ask.ts';
import { alphaValue } from '../experiments/temperature-plan.ts';
import type { Experiment } from '../experiments/experiment.ts';
import { type DrawnReading, drawings } from '../experiments/drawings.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Order } from '../order/schema.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Program } from '../quantities/program.ts';
import { type Line, quantityLine, symbolLine } from '../quantities/working.ts';
import { scientific } from '../quantities/written.ts';
import { type RowLabel, rowLabel } from './record.ts';
import type { Layout } from '../experiments/layout.ts';
import { type AnswerRow, answerRows } from './answers.ts';
import { type FoundFault, foundFaults } from './finished-view.ts';
import { type GraphsInWords, type PageGraph, graphPapers, plots } from './graphs.ts';
import type { Issue } from './issue.ts';
import type { Sheet } from './sheet.ts';
import type { Doubt } from './doubts.ts';
import { roughly } from './rough.ts';
import { type KeyView, type WorksheetView, keyView, worksheetView } from './view.ts';
import { type StandardView, type WorstView, standardView, worstView } from './uncertainty-view.ts';
import type { Worked } from './worked.ts';

/** What a sentence's named blanks are filled with. */
export type Blanks = Record<string, Line | string>;

interface Page {
  /** The template under templates/sheets/. */
  template: string;
  student: { roll: string; name: string };
  code: string;
  /** Printed at the foot of every page of the sheet. */
  foot: string;
  blanks: Blanks;
  figures: { circuit?: string; graphs: Record<string, PageGraph> };
}

export interface LabelledDrawing extends DrawnReading {
  /** The row of the table that it belongs to, as the table calls it. */
  label?: RowLabel;
}

export interface WorksheetPage extends Page {
  view: WorksheetView;
  /** Instruments to be read. */
  drawings: LabelledDrawing[];
}

export interface SolutionPage extends Page {
  view: KeyView;
  /** The mistakes of a record to be corrected; none on other sheets. */
  faults: FoundFault[];
}

export interface KeyPage extends SolutionPage {
  /** Some answers are read off a line that the student lays by eye. */
  byEye: boolean;
  /** Readings that are taken off drawings, with the latitude of each where it has one. */
  drawn: { symbol: Line; latitude?: Line }[];
  answers: AnswerRow[];
  limits: { id: string; value: Line }[];
  worst: WorstView[];
  standard: StandardView[];
  truths: { id: string; value: Line }[];
}

/** Words of a language that the pages' blanks need. */
export interface PageWords {
  spoken: SpokenWords;
  known: Record<string, string>;
  figures: FigureWords;
  /** What stands along the axes of an experiment's graphs. */
  graphs: GraphsInWords;
}

/** The record of readings that were really taken. */
export interface MeasuredPage extends SolutionPage {
  limits: KeyPage['limits'];
  worst: WorstView[];
  standard: StandardView[];
  /** What asks for a second look, by what it is about, with the blanks of its sentence. */
  doubts: { about: Doubt['about']; blanks: Blanks }[];
}

interface Common {
  issue: Pick<Issue, 'sheet' | 'roll' | 'name' | 'code'>;
  order: Order;
  ask: Ask;
  words: PageWords;
  /** Nothing where the experiment has no circuit. */
  circuit?: string;
  /** The sheet's place in its document, so that ids differ. */
  place: number;
}

/** A worksheet is made from the sheet alone: nothing worked out, and no truth, is within reach here. */
export function worksheetPage(common: Common, program: Program, experiment: Experiment): WorksheetPage {
  const { issue, order, words } = common;
  const view = worksheetView(issue.sheet, program, experiment, words.spoken, order.readings === 'blank');
  const drawn = order.readings === 'blank' ? [] : drawings(program.steps, { ...issue.sheet, drawn: issue.sheet.conventions.drawn, decided: experiment.layout.decided ?? [] }, `drawn-${common.place}`, words.figures);
  const graphs = graphPapers(experiment.layout, frameOf(common), words.figures);
  return { ...page('worksheet', common, view, graphs), view, drawings: drawn.map((one) => labelled(one, experiment.layout)) };
}

function labelled(drawing: DrawnReading, { observations }: Layout): LabelledDrawing {
  const table = observations.find((block) => 'table' in block && block.columns.includes(drawing.gives[0]!));
  return table && 'table' in table && drawing.row !== undefined ? { ...drawing, label: rowLabel(table.rows, drawing.row) } : drawing;
}

/** The worked sheet for handing back: no accept ranges, no truths. */
export function solutionPage(common: Common, worked: Worked, experiment: Experiment): SolutionPage {
  const { sheet } = common.issue;
  const view = keyView(sheet, worked, experiment.layout, common.words.spoken);
  const faults = sheet.finished ? foundFaults({ ...sheet, finished: sheet.finished }, worked, experiment.layout, common.words.spoken) : [];
  const graphs = plots(experiment.layout, worked, frameOf(common), common.words);
  return { ...page('solution', common, view, graphs), view, faults };
}

/** The teacher's key. */
export function keyPage(common: Common & { issue: Issue }, worked: Worked, experiment: Experiment): KeyPage {
  const { issue, words } = common;
  const { layout } = experiment;
  return {
    ...solutionPage(common, worked, experiment),
    template: 'key',
    answers: answerRows(worked, layout, words.spoken),
    byEye: worked.program.steps.some((step) => step.kind === 'summary' && step.byEye),
    drawn: drawnLines(issue, worked, words.spoken),
    ...uncertainties(issue.sheet, worked, layout, words.spoken),
    truths: layout.truths.map(({ id, unit }) => ({ id, value: roughly(issue.truth[id]!, unit, words.spoken) })),
  };
}

function uncertainties(sheet: Sheet, worked: Worked, { uncertain }: Layout, words: SpokenWords): Pick<KeyPage, 'limits' | 'worst' | 'standard'> {
  return {
    limits: limitLines(sheet, worked, words),
    worst: uncertain.map((id) => worstView(worked, id, words)),
    standard: uncertain.map((id) => standardView(worked, id, words)),
  };
}

/** A record is nobody's sheet: it has no roll and no code. */
export function measuredPage(given: Omit<Common, 'issue' | 'place'> & { sheet: Sheet; name: string }, worked: Worked, experiment: Experiment, doubts: readonly Doubt[]): MeasuredPage {
  const { sheet, name, words } = given;
  const common = { ...given, place: 0, issue: { sheet, name, roll: '', code: '' } };
  const of = ({ id, row }: Doubt) => ({ quantity: symbolLine(worked.program, id, words.spoken), row: String(row + 1) });
  return {
    ...solutionPage(common, worked, experiment),
    template: 'measured',
    foot: name,
    ...uncertainties(sheet, worked, experiment.layout, words.spoken),
    doubts: doubts.map((doubt) => ({ about: doubt.about, blanks: { ...of(doubt), low: String(given.order.window[0]), high: String(given.order.window[1]) } })),
  };
}

function drawnLines({ sheet }: Issue, { program }: Worked, words: SpokenWords): KeyPage['drawn'] {
  return Object.entries(sheet.conventions.drawn).map(([id, latitude]) => ({
    symbol: symbolLine(program, id, words),
    ...(latitude === 0 ? {} : { latitude: roughly(latitude, program.step(id).unit, words, 1) }),
  }));
}

/** The limit of each reading; readings that are written alike in several tables are told of once. */
function limitLines(sheet: Sheet, { program }: Worked, words: SpokenWords): KeyPage['limits'] {
  const told = new Set<string>();
  return Object.entries(sheet.conventions.limits).flatMap(([id, limit]) => {
    const { unit, tex } = program.step(id);
    const value = 'absolute' in limit ? roughly(limit.absolute, unit, words, 1) : roughly(100 * limit.fraction, '%', words, 1);
    const alike = `${tex} ${value.tex}`;
    if (told.has(alike)) return [];
    told.add(alike);
    return [{ id, value }];
  });
}

/** The gap in which the resistance box is drawn and told of: the sheet says it, or starts with the left where it uses both. */
export function knownGap({ form }: Pick<Sheet, 'form'>): Side {
  return form['known'] === 'right' ? 'right' : 'left';
}

const frameOf = ({ place }: Common) => `graph-${place}`;

function page(template: string, { issue, ask, order, words, circuit }: Common, view: { symbols: Record<string, Line> }, graphs: Record<string, PageGraph>): Page {
  const { accepted } = ask.wire;
  const { spoken, known } = words;
  const [low, high] = order.window;
  const gap = knownGap(issue.sheet);
  return {
    template,
    student: { roll: issue.roll, name: issue.name },
    code: issue.code,
    foot: `${issue.roll} · ${issue.code}`,
    figures: { ...(circuit !== undefined && { circuit }), graphs },
    blanks: {
      ...view.symbols,
      pi: { tex: '\\pi', spoken: spoken.pi },
      known: known[gap]!,
      other: known[gap === 'left' ? 'right' : 'left']!,
      low: String(low),
      high: String(high),
      material: accepted.material,
      value: quantityLine(scientific(accepted.rho), 'Ω m', spoken),
      celsius: String(accepted.celsius),
      source: accepted.sourceName,
      ...alphaBlanks(ask, spoken),
    },
  };
}

/** The table's temperature coefficient, for experiments that name it. */
function alphaBlanks({ wire }: Ask, words: SpokenWords): Blanks {
  const found = alphaValue(wire);
  if (!found) return {};
  return { alpha: quantityLine(found.alpha.value, '/°C', words), alphaCelsius: String(found.alpha.celsius), alphaSource: found.sourceName };
}
