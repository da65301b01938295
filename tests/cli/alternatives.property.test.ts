import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Asked } from '../../generators/cli/asked.ts';
import { offeredGauges } from '../../generators/cli/plan-words.ts';
import { planWires } from '../../generators/cli/wires.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { type Alternative, alternatives } from '../../generators/experiments/alternatives.ts';
import { checkOrder } from '../../generators/order/check.ts';
import type { Order } from '../../generators/order/schema.ts';
import { readWireAsk } from '../../generators/order/wire-ask.ts';
import { askFor } from '../../generators/sheets/tables.ts';
import { known, tables } from '../sheets/class.ts';

const orders = fc.record({
  wires: fc.record({
    // The one source gives values for all but german silver.
    material: fc.constantFrom(...known.materials.filter((name) => name !== 'german silver')),
    gauge: fc.constantFrom(...known.gauges.SWG.map((number) => `SWG ${number}`)),
    cm: fc.integer({ min: 5, max: 1000 }),
  }).map(({ material, gauge, cm }) => `${material}, ${gauge}, ${cm} cm`),
  rows: fc.integer({ min: 3, max: 6 }),
  gap: fc.constantFrom('left', 'right'),
  window: fc.oneof(
    fc.integer({ min: 5, max: 45 }).map((low) => [low, 100 - low]),
    fc.tuple(fc.integer({ min: 5, max: 85 }), fc.integer({ min: 5, max: 60 })).map(([low, width]) => [low, Math.min(95, low + width)]),
  ),
  box: fc.constantFrom([1, 2, 2, 5], [0.1, 0.2, 0.2, 0.5, 1, 2, 2, 5, 10, 20], [10, 20, 50, 100]),
  resistivity: fc.constant('openstax-university'),
});

const asked = (order: Order): Asked => ({ order, students: [], notices: [], tables, known, files: {}, flags: {} });

/** The same order with one thing changed, as its teacher would change it. */
function apply(order: Order, offer: Alternative): Order {
  const [wire] = order.wires;
  switch (offer.change) {
    case 'length':
      return { ...order, wires: [{ ...wire!, lengthCm: offer.centimetres }] };
    case 'diameter':
      return { ...order, wires: [{ ...wire!, gauge: readWireAsk(`constantan, ${offer.gauge}, 50 cm`, known).gauge }] };
    case 'length and diameter':
      return apply(apply(order, { ...offer, change: 'length' }), { ...offer, change: 'diameter' });
    case 'interchange':
      return { ...order, experiment: 'interchange', rows: Math.max(3, Math.ceil(order.rows / 2)) };
    case 'box':
      return { ...order, box: offer.plugs.map(Number) };
    case 'window':
      return { ...order, window: [...offer.window] };
  }
}

test('every alternative that is offered, put into the order, makes the wire usable', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(orders, (values) => {
      const order = checkOrder(values, known);
      const { refused } = planWires(asked(order));
      fc.pre(refused.length > 0);
      const ask = askFor(order, [order.wires[0]!], tables);
      for (const offer of alternatives(ask, offeredGauges(tables), experimentNamed(order.experiment).plan)) {
        seen.add(offer.change);
        const changed = checkOrder(apply(order, offer), known);
        expect(planWires(asked(changed)).refused).toEqual([]);
        if (offer.change !== 'interchange') continue;
        const [low, high] = order.window;
        expect(2 * offer.settings.length).toBeGreaterThanOrEqual(order.rows);
        for (const { direct, interchanged } of offer.settings) {
          expect(direct + interchanged).toBeCloseTo(100, 9);
          for (const l of [direct, interchanged]) expect(l >= low && l <= high).toBe(true);
        }
      }
    }),
    { numRuns: 200, seed: 20 }, // one seed, so that every kind of change is sure to be among them
  );
  expect([...seen].sort()).toEqual(['box', 'diameter', 'interchange', 'length', 'length and diameter', 'window']);
});
