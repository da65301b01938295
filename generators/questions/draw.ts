import type { Readings } from '../quantities/evaluate.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import { type Direction, directions } from './direction.ts';
import { exactly } from './exact.ts';
import type { Quantity, Values } from './family.ts';
import { asPrinted, endsWithin, gridValue } from './number.ts';
import { faultsOf, isWorthPrinting } from './sound.ts';

const TRIES = 5000;

/**
 * Givens for a question worth printing, drawn from the family's values until they are sound. Throws where the family's
 * values leave none, which a test forbids.
 */
export function drawGivens(direction: Direction, random: Random, isWanted: (readings: Readings) => boolean = () => true): Readings {
  for (let i = 0; i < TRIES; i++) {
    const readings = draw(direction, random);
    if (readings === undefined) continue;
    const { values, faults } = faultsOf(direction, readings);
    if (faults.length === 0 && isWorthPrinting(direction, readings, values) && isWanted(readings)) return readings;
  }
  throw new Error(`${direction.family.id}, ${direction.name}: no set of givens in ${TRIES} is worth printing`);
}

function draw(direction: Direction, random: Random): Readings | undefined {
  const { body, givens, fixed, name, ask } = direction;
  if (ask.drawnBy !== undefined) return drawnBackwards(direction, ask.drawnBy, random);
  if (body.draw) {
    const given = body.draw(random, name);
    return { ...fixedReadings(body.quantities, fixed, given), ...given };
  }
  const varied = fixed.filter((id) => body.quantities[id]!.values !== undefined);
  const drawn = [...givens, ...varied].map((id): [string, Written] => [id, oneOf(id, body.quantities[id]!, random)]);
  return { ...fixedReadings(body.quantities, fixed), ...Object.fromEntries(drawn) };
}

/** Givens of one direction from those and the answers of another; nothing where one of them could not be printed. */
function drawnBackwards({ family, choice, body, givens, fixed }: Direction, by: string, random: Random): Readings | undefined {
  const other = directions(family, choice).find(({ name }) => name === by);
  const readings = other && draw(other, random);
  if (!other || !readings) return undefined;
  const values = exactly(other.program, readings);
  const taken = givens.map((id): [string, Written | undefined] => {
    const value = values.get(id)?.[0];
    if (readings[id] !== undefined) return [id, [readings[id]].flat()[0]];
    if (value === undefined) return [id, oneOf(id, body.quantities[id]!, random)];
    return [id, endsWithin(value, 3) ? asPrinted(value) : undefined];
  });
  if (taken.some(([, written]) => written === undefined)) return undefined;
  const same = fixed.map((id): [string, Written] => [id, [readings[id] ?? body.quantities[id]!.fixed!].flat()[0]!]);
  return Object.fromEntries([...same, ...taken]) as Readings;
}

/** What the quantities are that no setter need give: their usual value, or how many rows are given. */
export function fixedReadings(quantities: Readonly<Record<string, Quantity>>, fixed: readonly string[], given: Readings = {}): Readings {
  const rows = (table: string) => Math.max(...Object.entries(given).map(([id, column]) => (quantities[id]?.per === table ? column.length : 0)));
  return Object.fromEntries(fixed.map((id) => [id, quantities[id]!.count === undefined ? quantities[id]!.fixed! : String(rows(quantities[id]!.count!))]));
}

function oneOf(id: string, { values }: Quantity, random: Random): Written {
  if (values === undefined) throw new Error(`${id} is given and has no values to be drawn from`);
  return pick(values, random);
}

function pick(values: Values, random: Random): Written {
  if (!('from' in values)) return random.pick(values);
  const steps = Math.round((values.to - values.from) / Number(values.step));
  return gridValue(values.from, values.step, random.integer(0, steps));
}
