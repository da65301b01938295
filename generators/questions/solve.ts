import { type Mistake, UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import type { Readings } from '../quantities/evaluate.ts';
import { type Direction, arrangements, choiceOf, directions } from './direction.ts';
import { fixedReadings } from './draw.ts';
import type { Choice, Family, Quantity } from './family.ts';
import { type Question, question } from './question.ts';
import { quantityText, refusals } from './refusal.ts';
import { faultsOf } from './sound.ts';
import { numberTyped } from './typed.ts';

/** 'P=12.5' as it was typed; '?' asks for the quantity. */
export interface Assignment {
  name: string;
  value: string;
}

/**
 * A question on a setter's own numbers; what is missing is asked. Throws a UserMistake for a name or a number that is
 * none, for a set that no direction of the family starts from, and for a set that is not sound, with the reason.
 * `reasons` are the family's words for its conditions.
 */
export function solve(family: Family, assignments: readonly Assignment[], reasons: Readonly<Record<string, string>> = {}): Question {
  const { choice, rest } = chosen(family, assignments);
  const all = directions(family, choice);
  const { quantities } = all[0]!.body;
  const given = readingsOf(family, quantities, rest);
  const wanted = rest.filter(({ value }) => value === '?').map(({ name }) => name);
  const direction = directionFor(all, Object.keys(given), wanted);
  const readings = { ...fixedReadings(quantities, direction.fixed, given), ...given };
  const { values, faults } = faultsOf(direction, readings);
  const mistakes = faults.length > 0 ? refusals(faults, direction, reasons) : contradictions(direction, given, values);
  if (mistakes.length > 0) throw new UserMistake(mistakes);
  return question(direction, readings);
}

function chosen(family: Family, assignments: readonly Assignment[]): { choice: Choice; rest: Assignment[] } {
  const { choices = {} } = family;
  const mistakes: Mistake[] = [];
  const twice = assignments.filter(({ name }, place) => assignments.findIndex((other) => other.name === name) < place);
  mistakes.push(...twice.map(({ name }) => ({ field: name, what: 'is given twice; give it once' })));
  const some = assignments.filter(({ name }) => Object.hasOwn(choices, name));
  for (const { name, value } of some) {
    const known = choices[name]!;
    if (!known.includes(value)) mistakes.push({ field: name, what: `"${value}" is none of ${known.join(', ')}${didYouMean(value, known)}` });
  }
  if (mistakes.length > 0) throw new UserMistake(mistakes);
  return { choice: choiceOf(family, Object.fromEntries(some.map(({ name, value }) => [name, value]))), rest: assignments.filter((one) => !some.includes(one)) };
}

function readingsOf(family: Family, quantities: Readonly<Record<string, Quantity>>, assignments: readonly Assignment[]): Readings {
  const mistakes: Mistake[] = [];
  const names = [...Object.keys(quantities), ...Object.keys(family.choices ?? {})];
  const readings: Readings = {};
  for (const { name, value } of assignments) {
    const quantity = Object.hasOwn(quantities, name) ? quantities[name] : undefined;
    if (quantity === undefined) {
      const elsewhere = onlyWith(family, name);
      mistakes.push({ field: name, what: elsewhere ? `${family.id} has this${elsewhere}` : `${family.id} has no such quantity${didYouMean(name, names) || `; it has ${names.join(', ')}`}` });
      continue;
    }
    if (value === '?') continue;
    const read = quantity.per === undefined ? numberTyped(value, quantity.unit) : value.split(/[,;] *| +(?=[-+−.\d])/).map((one) => numberTyped(one, quantity.unit));
    if ([read].flat().includes(undefined)) mistakes.push({ field: name, what: `"${value}" is no number in ${quantity.unit || 'plain figures'}; write it as 12.5 or 4.9e-7` });
    else readings[name] = read as string | string[];
  }
  if (mistakes.length > 0) throw new UserMistake(mistakes);
  return readings;
}

/** ' only with section=area' for a quantity that other arrangements have. */
function onlyWith(family: Family, name: string): string {
  const own = arrangements(family).filter((choice) => Object.hasOwn(directions(family, choice)[0]!.body.quantities, name));
  const telling = Object.entries(family.choices ?? {}).flatMap(([key, values]) => {
    const having = values.filter((value) => own.some((choice) => choice[key] === value));
    return having.length < values.length ? [`${key}=${having.join('|')}`] : [];
  });
  return own.length === 0 ? '' : ` only with ${telling.join(' ')}`;
}

function directionFor(all: readonly Direction[], names: readonly string[], wanted: readonly string[]): Direction {
  const asks = all.filter(({ ask }) => wanted.every((id) => ask.finds.includes(id) || ask.steps.some((step) => step.id === id)));
  const free = ({ body }: Direction) => names.filter((id) => body.quantities[id]!.fixed === undefined);
  const exact = asks.find((one) => sameSet(one.givens, free(one)));
  // Too much is given: it may contradict itself, which is found on working it out.
  const fuller = asks.find((one) => one.givens.every((id) => names.includes(id)) && free(one).every((id) => one.givens.includes(id) || one.ask.steps.some((step) => step.id === id)));
  const found = exact ?? fuller;
  if (found) return found;
  const offers = [...new Set(all.map((one) => `${one.givens.join(', ') || 'nothing'} (finds ${one.ask.finds.join(', ')})`))];
  throw new UserMistake(`${all[0]!.family.id} cannot be worked from ${names.join(', ') || 'nothing'}${wanted.length > 0 ? ` for ${wanted.join(', ')}` : ''}; give one of these:\n    ${offers.join('\n    ')}`);
}

const sameSet = (a: readonly string[], b: readonly string[]) => a.length === b.length && a.every((id) => b.includes(id));

/** Givens that follow from others, and do not agree with what follows. */
function contradictions({ ask, body }: Direction, given: Readings, values: ReadonlyMap<string, readonly number[]>): Mistake[] {
  return ask.steps.flatMap(({ id }) => {
    const own = given[id];
    const value = values.get(id)?.[0];
    if (typeof own !== 'string' || value === undefined || agrees(Number(own), value)) return [];
    return [{ field: id, what: `the other givens make it ${quantityText(value, body.quantities[id]!)}, not ${own}; leave one of them out` }];
  });
}

/** To three figures, which is what answers are written with. */
const agrees = (own: number, value: number) => Math.abs(own - value) <= 0.005 * Math.abs(value);
