import { stringify } from 'yaml';
import { knownNames } from '../../generators/cli/content.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import type { Experiment, Observed } from '../../generators/experiments/experiment.ts';
import { isFit } from '../../generators/experiments/plan.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { askFor } from '../../generators/sheets/tables.ts';
import { workSheet } from '../marking/honest.ts';
import { tables } from './demo.ts';

export interface BenchSet {
  ask: Ask;
  observed: Observed;
}

/** What the experiment asks for each choice of as many of its usual wires as a student has, with other entries of the order where a test wants them. */
export function usualAsks({ id, wires }: Pick<Experiment, 'id' | 'wires'>, entries: Record<string, unknown> = {}): Ask[] {
  const order = readOrder(stringify({ experiment: id, ...entries }), 'order.yaml', knownNames(tables));
  return order.wires.flatMap((first) => {
    if (wires === 1) return [askFor(order, [first], tables)];
    return order.wires.filter((other) => other !== first).map((other) => askFor(order, [first, other], tables));
  });
}

/** Sets of readings of these in turn, by streams of this name; a set that the bench did not give is left out. */
export function benchSets(experiment: Experiment, asks: readonly Ask[], count: number, name = experiment.id): BenchSet[] {
  return Array.from({ length: count }, (_, i) => {
    const ask = asks[i % asks.length]!;
    return { ask, observed: experiment.observe(ask, streams(name).within('set', i)) };
  }).flatMap(({ ask, observed }) => (observed ? [{ ask, observed }] : []));
}

/** Per cent of the sets whose stated 95 % interval for a quantity holds what was put into the simulation. */
export function coverage(experiment: Experiment, sets: readonly BenchSet[], id: string, truth = (observed: Observed) => observed.truth[id]!): number {
  const covered = sets.filter(({ ask, observed }) => {
    const program = programOf(experiment, observed);
    const values = evaluate(program, observed.readings, 'even');
    const { of, scatters } = sensitivities(program, values);
    const { expanded } = standardUncertainty(of(id), scatters, values, experiment.halfWidths(ask));
    return Math.abs(values.exact.get(id)![0]! - truth(observed)) <= expanded;
  });
  return (100 * covered.length) / sets.length;
}

/** Answers of honest students, by a calculator that fits lines, that lie outside what is accepted. */
export function rejected(experiment: Experiment, sets: readonly BenchSet[]): string[] {
  const random = streams('honest').of(experiment.id);
  return sets.flatMap(({ observed }) => {
    const program = programOf(experiment, observed);
    const { form, readings } = observed;
    const sheet = { format: 1, edition: 1, experiment: experiment.id, origin: 'generated', form, readings, conventions: { ties: 'even', tables: false, drawn: {}, limits: {}, halfWidths: {} } } as const;
    const ranges = acceptRanges(program, readings, { tables: false, drawn: {} });
    return Object.entries(workSheet(program, sheet, random)).flatMap(([id, values]) =>
      values.flatMap((value, row) => {
        const [low, high] = ranges.get(id)![row]!;
        const noise = 1e-12 * (Math.abs(Number(value)) + (id === 'off' ? 200 : 0));
        return Number(value) >= low - noise && Number(value) <= high + noise ? [] : [`${id}[${row}] = ${value} not in ${low} to ${high}`];
      }),
    );
  });
}

/** What the dimensions of the relations do not allow. */
export function dimensionFaults(experiment: Experiment, { form, readings }: Pick<Observed, 'form' | 'readings'>): string[] {
  const program = programOf(experiment, { form });
  const { exact } = evaluate(program, readings, 'even');
  const args = Object.fromEntries([...exact].map(([id, column]) => [id, column[0]!]));
  return program.steps.flatMap((step) => (step.kind === 'relation' ? (dimensionFault(program, step, args) ?? []) : []));
}

/** Null points outside the window, or with other than millimetres. */
export function badNulls(sets: readonly BenchSet[]): string[] {
  return sets.flatMap(({ ask, observed }) => [observed.readings['l']!].flat().filter((l) => !/^\d\d\.\d$/.test(l) || Number(l) < ask.window[0] || Number(l) > ask.window[1]));
}

/** Whether the planner passes each of these. */
export const allFit = (experiment: Experiment, asks: readonly Ask[]) => asks.every((ask) => isFit(experiment.plan(ask)));

/** A column of readings as numbers. */
export const numbers = ({ readings }: Observed, id: string): number[] => [readings[id]!].flat().map(Number);
