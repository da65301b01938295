import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Bench, Hands } from './bench.ts';
import type { Bridge, Gaps } from './bridge.ts';
import { nearestMark } from './decimal.ts';
import { type Stretch, deadBand } from './null.ts';
import { bounded } from './numeric.ts';

/**
 * Where the jockey comes to rest, in cm on the scale: anywhere in the stretch without a deflection that is seen,
 * as far off as the hands, the eye and the knife edge make it.
 */
export function balance(bridge: Bridge, bench: Bench, gaps: Gaps, hands: Hands, random: Random): number {
  return restIn(deadBand(bridge, gaps), bridge, bench, hands, random);
}

/** The balance length l in cm as it is read, from the left end: to the nearest mark, seen from a little aside. */
export function readBalance(bridge: Bridge, bench: Bench, gaps: Gaps, hands: Hands, random: Random): Written {
  return readRest(deadBand(bridge, gaps), bridge, bench, hands, random);
}

/** The same where the stretch in which nothing is seen is known, whatever the circuit. */
export function readRest(stretch: Stretch, bridge: Bridge, bench: Bench, hands: Hands, random: Random): Written {
  const seen = restIn(stretch, bridge, bench, hands, random) + bench.hands[hands].parallax * random.normal();
  return nearestMark(bounded(seen, 0, bridge.length), bench.bridge.scaleDivision);
}

function restIn([low, high]: Stretch, { length }: Bridge, bench: Bench, hands: Hands, random: Random): number {
  return bounded(random.between(low, high) + bench.hands[hands].jockey * random.normal(), 0, length);
}
