import { readFileSync } from 'node:fs';
import type { Hands } from '../../generators/apparatus/bench.ts';
import { knownNames, loadTables } from '../../generators/cli/content.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import type { Observed } from '../../generators/experiments/experiment.ts';
import { resistivity } from '../../generators/experiments/resistivity.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import type { Order } from '../../generators/order/schema.ts';
import { streams } from '../../generators/random.ts';
import { askFor } from '../../generators/sheets/tables.ts';

export const tables = loadTables();
export const hands: Hands[] = ['careful', 'usual', 'hurried'];

/** The demo's order. */
export const demo: Order = readOrder(
  readFileSync(new URL('../../content/demo/order.yaml', import.meta.url), 'utf8'),
  'order.yaml',
  knownNames(tables),
);

/** What the demo asks for each of its wires, in other hands or with other entries. */
export function demoAsks(change: Partial<Order>): Ask[] {
  return demo.wires.map((wire) => askFor({ ...demo, ...change }, [wire], tables));
}

/** What an experiment asks for each of its usual wires, with other entries where a test wants them. */
export function drillAsks(experiment: string, change: Partial<Order>): Ask[] {
  const order = { ...readOrder(`experiment: ${experiment}\n`, 'order.yaml', knownNames(tables)), ...change };
  return order.wires.map((wire) => askFor(order, [wire], tables));
}

/** Sets of readings of the demo's wires in turn; a set that the bench did not give is left out. */
export function* sets(asks: readonly Ask[], count: number, seed: string): Generator<{ ask: Ask; observed: Observed }> {
  for (let i = 0; i < count; i++) {
    const ask = asks[i % asks.length]!;
    const observed = resistivity.observe(ask, streams(seed).within('set', i));
    if (observed) yield { ask, observed };
  }
}
