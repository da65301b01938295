import type { Written } from '../quantities/step.ts';
import type { Bench } from './bench.ts';
import { type Bridge, deflection, type Gaps, protectedBridge, type Side } from './bridge.ts';
import { written } from './decimal.ts';
import { bounded } from './numeric.ts';

/** What the needle shows, judged to the half division. */
export interface Shown {
  side: 'left' | 'right' | 'none';
  /** Without sign, '12.5'. */
  divisions: Written;
  /** The needle lies at the end of the scale; the deflection is larger than shown. */
  offScale: boolean;
}

/** The needle with the jockey touching at a scale reading in cm. */
export function needle(bridge: Bridge, gaps: Gaps, jockey: number): Shown {
  const { divisions } = bridge.galvanometer;
  const exact = deflection(bridge, gaps, jockey);
  const halves = bounded(Math.round(2 * Math.abs(exact)), 0, 2 * divisions);
  return {
    side: halves === 0 ? 'none' : exact < 0 ? 'left' : 'right',
    divisions: written(halves * 5, 1),
    offScale: Math.abs(exact) > divisions,
  };
}

/**
 * The connection check: the needle with the jockey touching near each end, the protective resistance in.
 * Not at the very ends: there the jockey stands on the strip, and a gap that is shorted or open shows nothing.
 */
export function connectionCheck(bridge: Bridge, bench: Bench, gaps: Gaps): Record<Side, Shown> {
  const tried = protectedBridge(bridge, bench);
  const { checkInset } = bench.bridge;
  return { left: needle(tried, gaps, checkInset), right: needle(tried, gaps, bridge.length - checkInset) };
}
