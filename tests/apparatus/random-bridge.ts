import type { Bench } from '../../generators/apparatus/bench.ts';
import { type Bridge, type Gaps, makeBridge } from '../../generators/apparatus/bridge.ts';
import type { Random } from '../../generators/random.ts';
import { bench } from './tables.ts';

/** Everything about a bridge larger than a school would put up with, so that no error hides by being small. */
export const wild: Bench = {
  ...bench,
  bridge: {
    ...bench.bridge,
    wireResistance: [0.005, 0.5],
    unevenness: 0.4,
    endCorrection: [0, 3],
    scaleOffset: [-1, 1],
    joint: [0, 0.3],
  },
  cell: { emf: [0.5, 6], internal: [0, 5] },
  galvanometer: { ...bench.galvanometer, coil: [1, 500], perDivision: [1e-7, 1e-4] },
};

export function wildBridge(random: Random): Bridge {
  return makeBridge(wild, random);
}

/** Any resistance from 0.05 to 50 Ω in each gap, small ones as often as large ones. */
export function anyGaps(random: Random): Gaps {
  const one = () => random.pick([0.05, 0.5, 5]) * random.between(1, 10);
  return { left: one(), right: one() };
}
