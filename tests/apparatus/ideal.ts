import type { Bridge } from '../../generators/apparatus/bridge.ts';

const bare = { inSeries: 0, across: Infinity };

/** A bridge without any imperfection, so that one can be put in at a time. */
export const ideal: Bridge = {
  length: 100,
  ohmsPerCm: 0.02,
  profile: { a: 0, b: 0 },
  endCorrection: { left: 0, right: 0 },
  scaleOffset: 0,
  terminals: { left: bare, right: bare },
  cell: { emf: 1.5, internal: 0.5 },
  galvanometer: { coil: 50, perDivision: 1.5e-5, divisions: 30, leastSeen: 0.25 },
  protective: 0,
};
