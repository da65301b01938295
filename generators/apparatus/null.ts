import { type Bridge, circuit, current, type Gaps } from './bridge.ts';
import { bounded, rootOfRising } from './numeric.ts';
import { resistanceShare } from './profile.ts';

/** A stretch of the scale, in cm from the left. */
export type Stretch = readonly [low: number, high: number];

/**
 * The scale reading in cm at which no current flows, exact to 1e-9 cm: where the wire, with its ends, is divided
 * as the gaps are. An end of the scale where no such place lies on it. RangeError where every place is one,
 * both gaps being open or both shorted.
 */
export function nullPlace(bridge: Bridge, gaps: Gaps): number {
  const { left, right } = circuit(bridge, gaps, 0);
  if (left === right && (left === 0 || left === Infinity)) throw new RangeError(`no null point: both gaps are ${left} Ω`);
  const { endCorrection, length, profile, scaleOffset } = bridge;
  const ratio = left === Infinity ? 1 : left / (left + right);
  const share = (ratio * (endCorrection.left + length + endCorrection.right) - endCorrection.left) / length;
  const fraction = rootOfRising((u) => resistanceShare(profile, u) - share, 0, 1);
  return bounded(length * fraction - scaleOffset, 0, length);
}

/**
 * The stretch of the scale in cm, round the null, where the deflection is too small to be seen. The current rises all
 * along the wire, whatever the resistances are, so that each end of the stretch is a root, or the wire's end.
 */
export function deadBand(bridge: Bridge, gaps: Gaps): Stretch {
  const sense = bridge.cell.emf < 0 ? -1 : 1;
  return unseenStretch(bridge, (jockey) => sense * current(bridge, gaps, jockey));
}

/** The stretch of the scale where a current in A, or a change of one, that rises all along the wire moves the needle too little to be seen. */
export function unseenStretch({ galvanometer: { leastSeen, perDivision }, length, scaleOffset }: Bridge, rising: (jockey: number) => number): Stretch {
  const unseen = leastSeen * Math.abs(perDivision);
  const wireFrom = Math.max(0, -scaleOffset);
  const wireTo = Math.min(length, length - scaleOffset);
  const reaches = (level: number) => rootOfRising((jockey) => rising(jockey) - level, wireFrom, wireTo);
  return [reaches(-unseen), reaches(unseen)];
}
