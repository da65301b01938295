import type { Random } from '../random.ts';
import type { Range } from './bench.ts';

/** One of the apparatuses that are met with: uniform between the limits. */
export function draw([low, high]: Range, random: Random): number {
  return random.between(low, high);
}

/** Uniform between −limit and +limit. */
export function within(limit: number, random: Random): number {
  return random.between(-limit, limit);
}
