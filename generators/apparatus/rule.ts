import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Bench, Hands } from './bench.ts';
import { nearestMark } from './decimal.ts';

/** A length in cm as it is read off the rule, between the terminals. */
export function readRule(bench: Bench, length: number, hands: Hands, random: Random): Written {
  return nearestMark(Math.max(0, length + bench.hands[hands].rule * random.normal()), bench.rule.division);
}
