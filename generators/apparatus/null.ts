import { type Bridge, circuit, current, type Gaps } from './bridge.ts';
import { bounded, rootOfRising } from './numeric.ts';
import { resistanceShare } from './profile.ts';

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
export function deadBand(bridge: Bridge, gaps: Gaps): [low: number, high: number] {
  const { leastSeen, perDivision } = bridge.galvanometer;
  const unseen = leastSeen * Math.abs(perDivision);
  const sense = bridge.cell.emf < 0 ? -1 : 1;
  const wireFrom = Math.max(0, -bridge.scaleOffset);
  const wireTo = Math.min(bridge.length, bridge.length - bridge.scaleOffset);
  const reaches = (level: number) =>
    rootOfRising((jockey) => sense * current(bridge, gaps, jockey) - level, wireFrom, wireTo);
  return [reaches(-unseen), reaches(unseen)];
}
