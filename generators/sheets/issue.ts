import type { Experiment } from '../experiments/experiment.ts';
import type { Order } from '../order/schema.ts';
import { type WireAsk, writeWireAsk } from '../order/wire-ask.ts';
import { program } from '../quantities/program.ts';
import { streams } from '../random.ts';
import { clashes } from './apart.ts';
import { sheetCode } from './code.ts';
import { conventions } from './conventions.ts';
import type { Sheet } from './sheet.ts';
import { type Tables, askFor } from './tables.ts';
import { type Worked, workOut } from './worked.ts';

/** Who gets a sheet. */
export interface Recipient {
  roll: string;
  name: string;
  wire?: WireAsk;
}

/** A sheet as it was issued. */
export interface Issue {
  roll: string;
  name: string;
  code: string;
  /** 0, or how often this roll's sheet was drawn again because it came too near to an earlier one. */
  attempt: number;
  /** The wire, as an order writes it. */
  wire: string;
  /** Right answers that another sheet of the pack would accept too; none in a pack that is kept apart. */
  shared: { roll: string; id: string; row: number }[];
  sheet: Sheet;
  truth: Record<string, number>;
}

/** Draws that came too near to an earlier sheet before the nearest miss is taken. */
const MOST_ATTEMPTS = 12;
/** Benches that gave no usable set: a plan that passed makes more than a few of these unbelievable. */
const MOST_FAILURES = 200;

export interface Issuer {
  order: Order;
  experiment: Experiment;
  tables: Tables;
  /** The secret of the pack, or the seed that was chosen. */
  secret: string;
}

interface Drawn extends Omit<Issue, 'shared'> {
  worked: Worked;
}

/** Sheets for a class, in its order. Each depends on order, secret and roll alone, unless it came too near to an earlier one. */
export function issueSheets(issuer: Issuer, recipients: readonly Recipient[]): Issue[] {
  const issued: Drawn[] = [];
  return recipients.map((recipient) => {
    const { drawn, shared } = apart(issuer, recipient, issued);
    issued.push(drawn);
    const { worked: _, ...issue } = drawn;
    return { ...issue, shared };
  });
}

function apart(issuer: Issuer, recipient: Recipient, issued: readonly Drawn[]): { drawn: Drawn; shared: Issue['shared'] } {
  let best: { drawn: Drawn; shared: Issue['shared'] } | undefined;
  let tried = 0;
  for (let attempt = 0; attempt < MOST_FAILURES && tried < MOST_ATTEMPTS; attempt++) {
    const drawn = draw(issuer, recipient, attempt);
    if (!drawn) continue;
    tried++;
    const shared = issued.flatMap((other) => clashes(drawn.worked, other.worked, issuer.experiment.layout.apart).map((clash) => ({ roll: other.roll, ...clash })));
    if (!best || shared.length < best.shared.length) best = { drawn, shared };
    if (shared.length === 0) break;
  }
  if (!best) throw new Error(`no usable set of readings for roll ${recipient.roll} in ${MOST_FAILURES} draws`);
  return best;
}

function draw({ order, experiment, tables, secret }: Issuer, { roll, name, wire }: Recipient, attempt: number): Drawn | undefined {
  const own = streams(secret).within('sheet', roll, attempt);
  const dealt = wire ?? own.of('wire dealt').pick(order.wires);
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
    conventions: conventions(order, ask, experiment),
  };
  const worked = workOut(sheet, programOf(experiment, sheet));
  return { roll, name, attempt, code: sheetCode(secret, roll, attempt), wire: writeWireAsk(dealt), sheet, truth: observed.truth, worked };
}

const programs = new Map<string, ReturnType<typeof program>>();

/** The steps of a sheet, checked once for each form of an experiment. */
export function programOf(experiment: Experiment, { form }: Pick<Sheet, 'form'>): ReturnType<typeof program> {
  const key = JSON.stringify([experiment.id, form]);
  const made = programs.get(key) ?? program(experiment.steps(form));
  programs.set(key, made);
  return made;
}
