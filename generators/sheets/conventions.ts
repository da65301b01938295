import type { Ask } from '../experiments/ask.ts';
import { drawnOn } from '../experiments/drawings.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Order } from '../order/schema.ts';
import type { Instrument, Reading, Step } from '../quantities/step.ts';
import type { Limit } from '../quantities/uncertainty.ts';
import type { Conventions } from './sheet.ts';

/** How an order wants a sheet of these steps worked and judged. */
export function conventions(order: Order, ask: Ask, experiment: Experiment, steps: readonly Step[]): Conventions {
  const readings = steps.filter((step) => step.kind === 'reading');
  return {
    ties: order.rounding,
    tables: order.tables,
    drawn: byInstrument(readings, latitudes(order, ask)),
    limits: byInstrument(readings, limits(order, ask)),
    halfWidths: experiment.halfWidths(ask),
  };
}

/** What belongs to an instrument belongs to every reading that is taken on it. */
export function byInstrument<T>(readings: readonly Reading[], sizes: Partial<Record<Instrument, T>>): Record<string, T> {
  return Object.fromEntries(
    readings.flatMap(({ id, on }) => {
      const found = on && sizes[on];
      return found === undefined ? [] : [[id, found]];
    }),
  );
}

/** The screw gauge is off by one division at most, the rule and the thermometer by one; schools take the zero correction, and what the main scale shows, as exact. */
function limits({ limits: { l, R } }: Order, { bench }: Ask): Partial<Record<Instrument, Limit>> {
  return {
    box: { fraction: R / 100 },
    scale: { absolute: l },
    'circular scale': { absolute: 1 },
    rule: { absolute: Number(bench.rule.division) },
    thermometer: { absolute: Number(bench.thermometer.division) },
  };
}

/** How far a reading off a drawing may lie from the truth; a plug is in or out, a main scale is read to a whole division, and a needle or a thread to half of one. */
function latitudes({ drawn, latitude }: Order, { bench }: Ask): Partial<Record<Instrument, number>> {
  const all: Record<Instrument, number> = { box: 0, 'main scale': 0, scale: latitude.l, 'circular scale': latitude.n, 'closed jaws': latitude.n, rule: latitude.L, thermometer: Number(bench.thermometer.division) / 2, galvanometer: 0.5 };
  return Object.fromEntries(drawn.flatMap((name) => drawnOn(name).map((instrument) => [instrument, all[instrument]])));
}
