import type { Bench } from '../apparatus/bench.ts';
import { type Gauges, gaugeDiameter } from '../apparatus/gauges.ts';
import { type Materials, nominalValue, tableValue, valuesOf } from '../apparatus/materials.ts';
import type { Ask, NominalWire } from '../experiments/ask.ts';
import type { Order } from '../order/schema.ts';
import type { WireAsk } from '../order/wire-ask.ts';

/** The language-neutral tables of content. */
export interface Tables {
  bench: Bench;
  materials: Materials;
  gauges: Gauges;
}

/** What an order asks of the bench for a student's wires; UserMistake where the tables do not hold them. */
export function askFor(order: Order, wires: readonly WireAsk[], tables: Tables): Ask {
  const { bench } = tables;
  const [wire, ...others] = wires.map((each) => nominalWire(each, order.resistivity, tables));
  return {
    wire: wire!,
    others,
    candidates: valuesOf(tables.materials, order.resistivity),
    bench: { ...bench, box: { ...bench.box, plugs: order.box.map(String) } },
    known: order.gap,
    rows: order.rows,
    window: order.window,
    hands: order.hands,
  };
}

function nominalWire({ material, gauge, lengthCm }: WireAsk, source: string, { materials, gauges }: Tables): NominalWire {
  const inTable = 'system' in gauge;
  return {
    made: nominalValue(materials, material),
    accepted: tableValue(materials, material, source),
    gauge: inTable ? `${gauge.system} ${gauge.number}` : `${gauge.mm} mm`,
    diameter: Number(inTable ? gaugeDiameter(gauges, gauge.system, String(gauge.number)) : gauge.mm),
    length: lengthCm,
  };
}
