import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import { type Mistake, UserMistake } from '../mistake.ts';
import type { Order } from '../order/schema.ts';
import type { ReadingColumn } from '../order/reading-columns.ts';
import { conventions } from './conventions.ts';
import { programOf } from './issue.ts';
import { type ColumnNames, isWanted, typedIn } from './measured-columns.ts';
import type { Sheet } from './sheet.ts';

/**
 * The sheet of readings that were really taken, one column a quantity; what is a matter of the apparatus (the length of
 * the bridge wire, a table value) comes from the order.
 * @throws UserMistake with every cell that cannot be a reading
 */
export function measuredSheet(columns: readonly ReadingColumn[], experiment: Experiment, order: Order, ask: Ask, names: ColumnNames, file: string): Sheet {
  const ideal = experiment.ideal(ask);
  const steps = (form: Record<string, string>) => programOf(experiment, { form }).steps;
  const givens = steps(ideal.form).filter((step) => isWanted(step) && step.kind === 'given');
  const known = Object.fromEntries(givens.flatMap(({ id }) => (ideal.readings[id] === undefined ? [] : [[id, ideal.readings[id]]])));
  const read = typedIn(columns, experiment, steps(ideal.form), names, known);
  if ('mistakes' in read) throw refused(read.mistakes, file);
  const form = { ...ideal.form, ...read.typed.choices };
  return {
    format: 1,
    edition: experiment.edition,
    experiment: experiment.id,
    origin: 'measured',
    form,
    readings: read.typed.readings,
    conventions: conventions(order, ask, experiment, steps(form)),
  };
}

const refused = (mistakes: readonly Mistake[], file: string) => new UserMistake(mistakes.map((mistake) => ({ file, ...mistake })));
