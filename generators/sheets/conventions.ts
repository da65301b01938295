import type { Ask } from '../experiments/ask.ts';
import { drawnReadings } from '../experiments/drawings.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Order } from '../order/schema.ts';
import type { Conventions } from './sheet.ts';

/** How an order wants its sheets worked and judged. The screw gauge is off by one division at most, the rule by one. */
export function conventions(order: Order, ask: Ask, experiment: Experiment): Conventions {
  return {
    ties: order.rounding,
    tables: order.tables,
    drawn: drawnReadings(order.drawn, { ...order.latitude, n0: order.latitude.n }),
    limits: {
      R: { fraction: order.limits.R / 100 },
      l: { absolute: order.limits.l },
      n: { absolute: 1 },
      L: { absolute: Number(ask.bench.rule.division) },
    },
    halfWidths: experiment.halfWidths(ask),
  };
}
