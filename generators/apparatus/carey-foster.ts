import { type Bridge, type Gaps, type Side, circuit } from './bridge.ts';
import { galvanometerCurrent } from './circuit.ts';
import { type Stretch, unseenStretch } from './null.ts';

/** Resistances in Ω of the two equal arms in the inner gaps, joints included. */
export type RatioArms = Readonly<Record<Side, number>>;

/**
 * Galvanometer current in A of the Carey Foster bridge, positive from the middle strip to the jockey: `outer` are the
 * resistances put into the outer gaps, each in series with its end of the wire; the ratio arms lie in the inner gaps, and
 * the cell joins the strips between an outer and an inner gap, so that it is the four-arm bridge with longer arms below.
 */
export function careyFosterCurrent(bridge: Bridge, outer: Gaps, arms: RatioArms, jockey: number): number {
  const { left, right, wireLeft, wireRight, galvanometer, cell, emf } = circuit(bridge, outer, jockey);
  return galvanometerCurrent({ left: arms.left, right: arms.right, wireLeft: left + wireLeft, wireRight: right + wireRight, galvanometer, cell, emf });
}

/** The stretch of the scale in cm, round the null, where the deflection is too small to be seen; the wire's end where the null lies beyond it. */
export function careyFosterStretch(bridge: Bridge, outer: Gaps, arms: RatioArms): Stretch {
  const sense = bridge.cell.emf < 0 ? -1 : 1;
  return unseenStretch(bridge, (jockey) => sense * careyFosterCurrent(bridge, outer, arms, jockey));
}
