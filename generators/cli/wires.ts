import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import { experimentNamed } from '../experiments/index.ts';
import { type Plan, isFit } from '../experiments/plan.ts';
import { type Mistake, type Place, UserMistake } from '../mistake.ts';
import { type WireAsk, writeWireAsk } from '../order/wire-ask.ts';
import { askFor } from '../sheets/tables.ts';
import type { Asked } from './asked.ts';
import { offeredGauges, refusal } from './plan-words.ts';

/** The wires of one student with what the experiment can do with them. */
export interface PlannedWires {
  wires: WireAsk[];
  ask: Ask;
  plan: Plan;
}

/** A wire of the order and where it stands. */
interface Placed {
  wire: WireAsk;
  place: Place;
}

/** Plans all that students may be dealt from an order; what cannot be used is refused, each where it stands, with what would do. */
export function planWires(asked: Asked): { usable: PlannedWires[]; refused: Mistake[] } {
  const experiment = experimentNamed(asked.order.experiment);
  const all = wiresOf(asked);
  if (all.length < experiment.wires) return { usable: [], refused: [{ ...all[0]!.place, what: tooFew(experiment) }] };
  const usable: PlannedWires[] = [];
  const refused: Mistake[] = [];
  for (const set of setsOf(all, experiment.wires)) {
    const wires = set.map(({ wire }) => wire);
    const planned = planSet(asked, experiment, wires);
    if ('ask' in planned) usable.push(planned);
    else refused.push({ ...set.at(-1)!.place, what: `${wires.map(writeWireAsk).join(' and ')}: ${planned.why}` });
  }
  return { usable, refused };
}

const tooFew = ({ id, wires }: Experiment) => `each student works with ${wires} different wires in ${id}; give at least ${wires}`;

/** Every choice of so many of a list, in its order. */
function setsOf<T>(list: readonly T[], count: number): T[][] {
  if (count === 0) return [[]];
  return list.flatMap((first, i) => setsOf(list.slice(i + 1), count - 1).map((rest) => [first, ...rest]));
}

function planSet(asked: Asked, experiment: Experiment, wires: WireAsk[]): PlannedWires | { why: string } {
  try {
    const ask = askFor(asked.order, wires, asked.tables);
    const plan = experiment.plan(ask);
    return isFit(plan) ? { wires, ask, plan } : { why: refusal(ask, experiment, offeredGauges(asked.tables)) };
  } catch (error) {
    if (error instanceof UserMistake) return { why: error.message };
    throw error;
  }
}

/** Every wire of an order, those of single students included, each once, where it stands first. */
function wiresOf({ order, students, files, flags }: Asked): Placed[] {
  const onFlags = files.order === undefined || flags['wire'] !== undefined;
  const all = [
    ...order.wires.map((wire, i) => ({ wire, place: onFlags ? { field: '--wire' } : { file: files.order!, field: `wires ${i + 1}` } })),
    ...students.flatMap(({ wire, row }) => (wire ? [{ wire, place: { file: files.class!, row, field: 'wire' } }] : [])),
  ];
  const first = new Map<string, Placed>();
  for (const each of all) {
    const text = writeWireAsk(each.wire);
    if (!first.has(text)) first.set(text, each);
  }
  return [...first.values()];
}
