import { knownNames } from '../../generators/cli/content.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import type { Experiment, Observed } from '../../generators/experiments/experiment.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import type { Order } from '../../generators/order/schema.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { askFor } from '../../generators/sheets/tables.ts';
import { tables } from './demo.ts';

export interface BenchSet {
  ask: Ask;
  observed: Observed;
}

/** What an experiment asks for each choice of one or two of its usual wires, with other entries where a test wants them. */
export function usualAsks({ id, wires }: Experiment, change: Partial<Order> = {}): Ask[] {
  const order = { ...readOrder(`experiment: ${id}\n`, 'order.yaml', knownNames(tables)), ...change };
  return order.wires.flatMap((first) => {
    if (wires === 1) return [askFor(order, [first], tables)];
    return order.wires.filter((other) => other !== first).map((other) => askFor(order, [first, other], tables));
  });
}

/** Sets of readings of these in turn; a set that the bench did not give is left out. */
export function benchSets(experiment: Experiment, asks: readonly Ask[], count: number, seed: string): BenchSet[] {
  return Array.from({ length: count }, (_, i) => {
    const ask = asks[i % asks.length]!;
    return { ask, observed: experiment.observe(ask, streams(seed).within('set', i)) };
  }).flatMap(({ ask, observed }) => (observed ? [{ ask, observed }] : []));
}

/** In how many per cent of the sets the stated 95 % interval of a result holds what was put into the simulation. */
export function coverage(experiment: Experiment, sets: readonly BenchSet[], id: string, truth: (observed: Observed) => number): number {
  const covered = sets.filter(({ ask, observed }) => {
    const program = programOf(experiment, observed);
    const values = evaluate(program, observed.readings, 'even');
    const { of, scatters } = sensitivities(program, values);
    const { expanded } = standardUncertainty(of(id), scatters, values, experiment.halfWidths(ask));
    return Math.abs(values.exact.get(id)![0]! - truth(observed)) <= expanded;
  });
  return (100 * covered.length) / sets.length;
}

/** A column of readings as numbers. */
export const numbers = ({ readings }: Observed, id: string): number[] => [readings[id]!].flat().map(Number);
