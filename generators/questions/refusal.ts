import type { Mistake } from '../mistake.ts';
import { unit } from '../quantities/unit.ts';
import { round } from '../quantities/written.ts';
import type { Direction } from './direction.ts';
import type { Quantity } from './family.ts';
import { endsWithin } from './number.ts';
import { plainText } from './plain-text.ts';
import type { Fault } from './sound.ts';

/**
 * What a setter is told of a set that is not sound: the givens that cannot be, else the family's reasons, else the first
 * line of working that comes to what cannot be, for the rest only follows from it.
 */
export function refusals(faults: readonly Fault[], { body, ask, givens, fixed }: Direction, reasons: Readonly<Record<string, string>>): Mistake[] {
  const of = (ids: readonly string[]) => faults.filter((fault) => fault.is !== 'condition' && ids.includes(fault.id));
  const given = of([...givens, ...fixed]);
  const words = (fault: Fault) => inWords(fault, body.quantities, reasons, given.includes(fault) ? '' : ' with these givens,');
  if (given.length > 0) return given.map(words);
  const failed = faults.filter(({ is }) => is === 'condition');
  if (failed.length > 0) return failed.map(words);
  return ask.steps.flatMap(({ id }) => of([id])).slice(0, 1).map(words);
}

function inWords(fault: Fault, quantities: Readonly<Record<string, Quantity>>, reasons: Readonly<Record<string, string>>, why: string): Mistake {
  switch (fault.is) {
    case 'condition':
      return { what: reasons[fault.reason] ?? fault.reason };
    case 'no value':
      return { field: fault.id, what: 'has no value with these givens: something is divided by zero, or a root is taken of a negative number' };
    case 'not whole':
      return { field: fault.id, what: `is ${quantityText(fault.value, quantities[fault.id]!)}${why} and must be a whole number` };
    case 'out of bounds': {
      const { id, value, low, high, mayBeLeast } = fault;
      const quantity = quantities[id]!;
      const limits = [...(low === undefined ? [] : [mayBeLeast ? `${limitText(low, quantity)} or more` : `above ${limitText(low, quantity)}`]), ...(high === undefined ? [] : [`below ${limitText(high, quantity)}`])];
      return { field: id, what: `is ${quantityText(value, quantity)}${why} and must be ${limits.join(' and ')}` };
    }
  }
}

/** '4.67 Ω', '60°', '2'. */
export function quantityText(value: number, { unit: name }: Quantity): string {
  const sign = plainText(unit(name).tex);
  return `${plainNumber(value)}${sign === '' || sign === '°' ? sign : ` ${sign}`}`;
}

const limitText = (limit: number, quantity: Quantity) => (limit === 0 ? '0' : quantityText(limit, quantity));

function plainNumber(value: number): string {
  return endsWithin(value, 6) ? String(Number(round(value, { figures: 6 }, 'even'))) : round(value, { figures: 3 }, 'even');
}
