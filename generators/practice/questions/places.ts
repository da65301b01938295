import type { Question } from '../../questions/question.ts';
import type { Sheet } from '../../sheets/sheet.ts';
import { type Place, placeKey } from '../places.ts';

const NO_MARKS = { method: 0, answer: 0, unit: 0, figures: 0 };

/** A question as a sheet, which is what entries are judged on. */
export function sheetOf({ direction, readings }: Pick<Question, 'direction' | 'readings'>): Sheet {
  const conventions = { ties: 'even' as const, tables: false, drawn: {}, limits: {}, halfWidths: {} };
  return { format: 1, edition: 1, experiment: direction.family.id, origin: 'generated', form: { ...direction.choice }, readings, conventions };
}

/** A place for every line that makes a quantity, in the order of the lines, so that what a value is worked from comes first. Only the answers need be filled in. */
export function placesOf({ direction, program, values }: Question): Place[] {
  return direction.ask.steps.filter(({ decide }) => !decide).flatMap(({ id }) => {
    const step = program.step(id);
    if (step.kind !== 'relation' && step.kind !== 'summary') return [];
    const isHelp = !direction.ask.finds.includes(id);
    const common = { id, inTable: step.per !== undefined, unit: step.unit, digits: step.digits, marks: NO_MARKS, kind: 'worked' as const, anyFigures: true as const, ...(isHelp && { optional: true as const }) };
    return values.written.get(id)!.map((_, row) => ({ ...common, row, key: placeKey(id, row) }));
  });
}
