import type { Ask } from '../experiments/ask.ts';
import type { BridgePlan } from '../experiments/bridge-plan.ts';
import { experimentNamed } from '../experiments/index.ts';
import { type Mistake, type Place, UserMistake } from '../mistake.ts';
import { type WireAsk, writeWireAsk } from '../order/wire-ask.ts';
import { askFor } from '../sheets/tables.ts';
import type { Asked } from './asked.ts';
import { offeredGauges, refusal } from './plan-words.ts';

/** A wire of the order with what the bridge can do with it. */
export interface PlannedWire {
  wire: WireAsk;
  ask: Ask;
  plan: BridgePlan;
}

/** Plans every wire of an order; those that cannot be used are refused, each where it stands, with what would do. */
export function planWires(asked: Asked): { usable: PlannedWire[]; refused: Mistake[] } {
  const usable: PlannedWire[] = [];
  const refused: Mistake[] = [];
  for (const { wire, place } of wiresOf(asked)) {
    const planned = planWire(asked, wire);
    if ('ask' in planned) usable.push(planned);
    else refused.push({ ...place, what: `${writeWireAsk(wire)}: ${planned.why}` });
  }
  return { usable, refused };
}

function planWire(asked: Asked, wire: WireAsk): PlannedWire | { why: string } {
  try {
    const ask = askFor(asked.order, wire, asked.tables);
    const experiment = experimentNamed(asked.order.experiment);
    const plan = experiment.plan(ask);
    return plan.usable.length >= ask.rows ? { wire, ask, plan } : { why: refusal(ask, experiment, offeredGauges(asked.tables)) };
  } catch (error) {
    if (error instanceof UserMistake) return { why: error.message };
    throw error;
  }
}

/** Every wire of an order, those of single students included, each once, where it stands first. */
function wiresOf({ order, students, files, flags }: Asked): { wire: WireAsk; place: Place }[] {
  const onFlags = files.order === undefined || flags['wire'] !== undefined;
  const all = [
    ...order.wires.map((wire, i) => ({ wire, place: onFlags ? { field: '--wire' } : { file: files.order!, field: `wires ${i + 1}` } })),
    ...students.flatMap(({ wire, row }) => (wire ? [{ wire, place: { file: files.class!, row, field: 'wire' } }] : [])),
  ];
  const first = new Map<string, (typeof all)[number]>();
  for (const each of all) {
    const text = writeWireAsk(each.wire);
    if (!first.has(text)) first.set(text, each);
  }
  return [...first.values()];
}
