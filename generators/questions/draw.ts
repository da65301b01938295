import type { Readings } from '../quantities/evaluate.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import { type Direction, directions } from './direction.ts';
import { type Exact, exactly } from './exact.ts';
import { isFirm } from './firm.ts';
import type { Quantity, Values } from './family.ts';
import { asPrinted, endsWithin, gridValue } from './number.ts';
import { faultsOf, hasSimpleAnswers, isNeat, isWorthPrinting } from './sound.ts';

const TRIES = 5000;

/** No set of givens is as wanted. */
export class NoGivens extends Error {
  override readonly name = 'NoGivens';
}

/**
 * Givens for a question worth printing, drawn from the family's values until they are sound and as wanted. Throws
 * NoGivens where the family's values leave none; without a wish a test forbids that.
 */
export function drawGivens(direction: Direction, random: Random, isWanted: (readings: Readings, values: Exact) => boolean = () => true, tries = TRIES): Readings {
  const drawOnce = drawing(direction);
  for (let i = 0; i < tries; i++) {
    const readings = drawOnce(random);
    if (readings === undefined) continue;
    const values = exactly(direction.program, readings);
    if (!hasSimpleAnswers(direction, values)) continue;
    if (faultsOf(direction, readings, values).faults.length === 0 && isWorthPrinting(direction, readings, values) && isFirm(direction, readings, values) && isWanted(readings, values)) return readings;
  }
  throw new NoGivens(`${direction.family.id}, ${direction.name}: no set of givens in ${tries} is worth printing`);
}

type Drawing = (random: Random) => Readings | undefined;

function drawing(direction: Direction): Drawing {
  const { body, givens, fixed, name, ask } = direction;
  const { quantities } = body;
  if (ask.drawnBy !== undefined) return drawingBackwards(direction, ask.drawnBy);
  if (body.draw) {
    return (random) => {
      const given = body.draw!(random, name);
      return { ...fixedReadings(quantities, fixed, given), ...given };
    };
  }
  const usual = fixedReadings(quantities, fixed);
  const drawn = [...givens, ...fixed.filter((id) => quantities[id]!.values !== undefined)];
  return (random) => {
    const readings = { ...usual };
    for (const id of drawn) readings[id] = oneOf(id, quantities[id]!, random);
    return readings;
  };
}

/** Givens of one direction from those and the answers of another; nothing where one of them could not be printed. */
function drawingBackwards({ family, choice, body, givens, fixed }: Direction, by: string): Drawing {
  const other = directions(family, choice).find(({ name }) => name === by);
  if (!other) throw new Error(`${family.id} has no direction ${by} to draw by`);
  const drawOther = drawing(other);
  return (random) => {
    const readings = drawOther(random);
    if (!readings) return undefined;
    const values = exactly(other.program, readings);
    const taken: Readings = {};
    for (const id of fixed) taken[id] = readings[id] ?? body.quantities[id]!.fixed!;
    for (const id of givens) {
      const value = values.get(id)?.[0];
      if (readings[id] !== undefined) taken[id] = readings[id];
      else if (value === undefined) taken[id] = oneOf(id, body.quantities[id]!, random);
      else if (endsWithin(value, 3) && isNeat(body.quantities[id]!, value)) taken[id] = printedAs(body.quantities[id]!, value);
      else return undefined;
    }
    return taken;
  };
}

/** With the decimals of the scale it is read on, or to three figures. */
function printedAs({ values }: Quantity, value: number): Written {
  return values !== undefined && 'from' in values ? gridValue(value, values.step, 0) : asPrinted(value);
}

/** What the quantities are that no setter need give: their usual value, or how many rows are given. */
export function fixedReadings(quantities: Readonly<Record<string, Quantity>>, fixed: readonly string[], given: Readings = {}): Readings {
  const rows = (table: string) => Math.max(...Object.entries(given).map(([id, column]) => (quantities[id]?.per === table ? column.length : 0)));
  return Object.fromEntries(fixed.map((id) => [id, quantities[id]!.count === undefined ? quantities[id]!.fixed! : String(rows(quantities[id]!.count!))]));
}

function oneOf(id: string, { values }: Quantity, random: Random): Written {
  if (values === undefined) throw new Error(`${id} is given and has no values to be drawn from`);
  return random.pick(listed(values));
}

const grids = new WeakMap<object, readonly Written[]>();

/** Every value of a grid, written once. */
function listed(values: Values): readonly Written[] {
  if (!('from' in values)) return values;
  const { from, to, step } = values;
  const kept = grids.get(values) ?? Array.from({ length: Math.round((to - from) / Number(step)) + 1 }, (_, i) => gridValue(from, step, i));
  grids.set(values, kept);
  return kept;
}
