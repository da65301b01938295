import type { Experiment } from '../experiments/experiment.ts';
import type { Order } from '../order/schema.ts';
import { type WireAsk, writeWireAsk } from '../order/wire-ask.ts';
import { program } from '../quantities/program.ts';
import { type Streams, keyedHash, streams } from '../random.ts';
import { type Marks, accepted, clashes, marks } from './apart.ts';
import { sheetCode } from './code.ts';
import { conventions } from './conventions.ts';
import type { Sheet } from './sheet.ts';
import { type Tables, askFor } from './tables.ts';
import { workOut } from './worked.ts';

/** Who gets a sheet. */
export interface Recipient {
  roll: string;
  name: string;
  /** A wire for this student alone, in place of one that is dealt. */
  wire?: WireAsk;
  /** The same of the further wires, where the experiment takes more than one. */
  others?: readonly WireAsk[];
  /** 1 where it is left out; 2 for the student's first further set, and so on. */
  sitting?: number;
}

/** A sheet as it was issued. */
export interface Issue {
  roll: string;
  name: string;
  /** 1 for the class's own sheets, more for a student's further sets. */
  sitting: number;
  code: string;
  /** 0, or how often this roll's sheet was drawn again because it came too near to an earlier one. */
  attempt: number;
  /** The student's wires, each as an order writes it. */
  wires: string[];
  /** Right answers that another sheet of the pack would accept too; none in a pack that is kept apart. */
  shared: { roll: string; id: string; row: number }[];
  sheet: Sheet;
  truth: Record<string, number>;
}

/**
 * Draws from which the one that stands best apart is taken, where none stands apart altogether: fewer in a large
 * class, where each has to be compared with many and no draw can help much.
 */
const MOST_DRAWS = 60;
const FEWEST_DRAWS = 4;
const COMPARISONS = 4_000;
/** Benches that gave no usable set: a plan that passed makes more than a few of these unbelievable. */
const MOST_FAILURES = 200;

export interface Issuer {
  order: Order;
  experiment: Experiment;
  tables: Tables;
  /** The secret of the pack, or the seed that was chosen. */
  secret: string;
}

interface Drawn {
  issue: Omit<Issue, 'shared'>;
  marks: Marks;
}

/**
 * Sheets for a class, in its order, that stand apart from each other and from those issued earlier. Each depends on
 * order, secret, roll and sitting alone, unless it came too near to one before it. Each is `told` when it is drawn.
 */
export function issueSheets(issuer: Issuer, recipients: readonly Recipient[], earlier: readonly Issue[] = [], told = () => {}): Issue[] {
  const issued = earlier.map((issue): Drawn => ({ issue, marks: marksOf(issuer, issue.sheet) }));
  const issues = recipients.map((recipient) => {
    const { drawn, shared } = apart(issuer, recipient, issued);
    issued.push(drawn);
    told();
    return { ...drawn.issue, shared };
  });
  return bothWays(issues);
}

/** Two sheets that share an answer name each other, the earlier one the later too. */
function bothWays(issues: readonly Issue[]): Issue[] {
  const back = new Map<string, Issue['shared']>();
  for (const { roll, shared } of issues)
    for (const { roll: other, ...answer } of shared) back.set(other, [...(back.get(other) ?? []), { roll, ...answer }]);
  return issues.map((issue) => ({ ...issue, shared: [...issue.shared, ...(back.get(issue.roll) ?? [])] }));
}

function apart(issuer: Issuer, recipient: Recipient, issued: readonly Drawn[]): { drawn: Drawn; shared: Issue['shared'] } {
  let best: { drawn: Drawn; shared: Issue['shared']; badness: number } | undefined;
  const draws = Math.max(FEWEST_DRAWS, Math.min(MOST_DRAWS, COMPARISONS / (issued.length + 1)));
  let tried = 0;
  for (let attempt = 0; attempt < MOST_FAILURES && tried < draws; attempt++) {
    const drawn = draw(issuer, recipient, attempt);
    if (!drawn || issued.some(({ issue }) => issue.code === drawn.issue.code)) continue;
    tried++;
    const { apart: ids } = issuer.experiment.layout;
    // Half of the comparison shows most draws to be no better than the best, without finding what they accept.
    if (best && weigh(sharedWith(drawn, issued, accepted), ids) >= best.badness) continue;
    const shared = sharedWith(drawn, issued, clashes);
    const badness = weigh(shared, ids);
    if (!best || badness < best.badness) best = { drawn, shared, badness };
    if (badness === 0) break;
  }
  if (!best) throw new Error(`no usable set of readings for roll ${recipient.roll} in ${MOST_FAILURES} draws`);
  return best;
}

function sharedWith({ marks: mine }: Drawn, issued: readonly Drawn[], by: typeof clashes): Issue['shared'] {
  const shared: Issue['shared'] = [];
  for (const { issue, marks } of issued) for (const clash of by(mine, marks)) shared.push({ roll: issue.roll, ...clash });
  return shared;
}

/** An answer that stands first in the list is worth more than any number of those after it. */
function weigh(shared: Issue['shared'], ids: readonly string[]): number {
  return ids.reduce((sum, id) => sum * 1000 + Math.min(999, shared.filter((clash) => clash.id === id).length), 0);
}

function draw(issuer: Issuer, recipient: Recipient, attempt: number): Drawn | undefined {
  const { order, experiment, tables } = issuer;
  const { roll, name, sitting = 1 } = recipient;
  const secret = secretOf(issuer.secret, sitting);
  const own = streams(secret).within('sheet', roll, attempt);
  const dealt = deal(recipient, order.wires, experiment.wires, own);
  const ask = askFor(order, dealt, tables);
  const observed = experiment.observe(ask, own);
  if (!observed) return undefined;
  const sheet: Sheet = {
    format: 1,
    edition: experiment.edition,
    experiment: experiment.id,
    origin: 'generated',
    form: observed.form,
    readings: observed.readings,
    conventions: conventions(order, ask, experiment, programOf(experiment, observed).steps),
    ...(observed.finished && { finished: observed.finished }),
  };
  const issue = { roll, name, sitting, attempt, code: sheetCode(secret, roll, attempt), wires: dealt.map(writeWireAsk), sheet, truth: observed.truth };
  return { issue, marks: marksOf(issuer, sheet) };
}

/** The student's own wires, else so many different ones of the order's, as the draw has it. */
function deal({ wire, others }: Recipient, wires: readonly WireAsk[], count: number, own: Streams): WireAsk[] {
  const first = wire ?? own.of('wire dealt').pick(wires);
  const left = others ?? own.of('further wires dealt').shuffle(wires.filter((each) => writeWireAsk(each) !== writeWireAsk(first)));
  return [first, ...left.slice(0, count - 1)];
}

/** Further sittings have secrets of their own, so that they share no stream and no code with the first. */
function secretOf(secret: string, sitting: number): string {
  return sitting === 1 ? secret : keyedHash(secret, ['sitting', sitting]);
}

function marksOf({ experiment }: Issuer, sheet: Sheet): Marks {
  return marks(workOut(sheet, programOf(experiment, sheet)), experiment.layout.apart);
}

const programs = new Map<string, ReturnType<typeof program>>();

/** The steps of a sheet, checked once for each form of an experiment. */
export function programOf(experiment: Experiment, { form }: Pick<Sheet, 'form'>): ReturnType<typeof program> {
  const key = JSON.stringify([experiment.id, form]);
  const made = programs.get(key) ?? program(experiment.steps(form));
  programs.set(key, made);
  return made;
}
