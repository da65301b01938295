import { acceptRanges } from '../quantities/accept.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Direction } from './direction.ts';
import type { Exact } from './exact.ts';

/** No tables and nothing read off a drawing: only rounding is allowed for. */
export const LATITUDE = { tables: false, drawn: {} };

/** As a part of the answer. Beyond it, rounding to three figures on the way decides more than the physics does; common practice, no source. */
const LOOSEST = 0.04;

/** Whether honest rounding on the way leaves every answer of three figures where it is: a small difference of large values does not. */
export function isFirm(direction: Direction, readings: Readings, values: Exact): boolean {
  const asked = direction.ask.finds.filter((id) => isToThree(direction, id) && values.has(id));
  if (asked.length === 0) return true;
  const ranges = acceptRanges(direction.program, readings, LATITUDE);
  return asked.every((id) => {
    const [low, high] = ranges.get(id)![0]!;
    return high - low <= LOOSEST * Math.abs(values.get(id)![0]!);
  });
}

/** Fewer figures are coarse by themselves. */
function isToThree({ body }: Direction, id: string): boolean {
  const quantity = body.quantities[id];
  return quantity !== undefined && quantity.digits === undefined && quantity.accepted === undefined;
}
