import type { Hands } from '../../generators/apparatus/bench.ts';
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

/** What the experiment asks for each of its usual wires, or of an order's own. */
export function usualAsks({ id }: Pick<Experiment, 'id'>, more = ''): Ask[] {
  const order = readOrder(`experiment: ${id}\n${more}`, 'order.yaml', knownNames(tables));
  return order.wires.map((wire) => askFor(order, [wire], tables));
}

/** Sets of readings of these wires in turn; what the bench did not give is left out. */
export function setsOf(experiment: Experiment, asks: readonly Ask[], count: number, hands: Hands = 'usual'): { ask: Ask; observed: Observed }[] {
  return Array.from({ length: count }, (_, i) => {
    const ask = { ...asks[i % asks.length]!, hands };
    return { ask, observed: experiment.observe(ask, streams(experiment.id).within(hands, i)) };
  }).flatMap(({ ask, observed }) => (observed ? [{ ask, observed }] : []));
}

/** Per cent of the sets whose stated 95 % interval for a quantity holds its true value. */
export function coveredIn(experiment: Experiment, sets: readonly { ask: Ask; observed: Observed }[], id: string, truth = id): number {
  const covered = sets.filter(({ ask, observed }) => {
    const program = programOf(experiment, observed);
    const values = evaluate(program, observed.readings, 'even');
    const { of, scatters } = sensitivities(program, values);
    const { expanded } = standardUncertainty(of(id), scatters, values, experiment.halfWidths(ask));
    return Math.abs(values.exact.get(id)![0]! - observed.truth[truth]!) <= expanded;
  });
  return (100 * covered.length) / sets.length;
}

/** Answers of honest students, by a calculator that fits lines, that lie outside what is accepted. */
export function rejected(experiment: Experiment, sets: readonly { observed: Observed }[]): string[] {
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
export function badNulls(sets: readonly { ask: Ask; observed: Observed }[]): string[] {
  return sets.flatMap(({ ask, observed }) => [observed.readings['l']!].flat().filter((l) => !/^\d\d\.\d$/.test(l) || Number(l) < ask.window[0] || Number(l) > ask.window[1]));
}

/** Whether the planner passes each of these. */
export const allFit = (experiment: Experiment, asks: readonly Ask[]) => asks.every((ask) => isFit(experiment.plan(ask)));
