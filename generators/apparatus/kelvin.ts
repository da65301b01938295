import { type Bridge, type Side, circuit } from './bridge.ts';
import type { Circuit } from './circuit.ts';
import { type Stretch, unseenStretch } from './null.ts';

/** A galvanometer in one gap of the bridge, a resistance in the other. */
export interface EqualDeflection {
  /** The gap that holds the resistance. */
  known: Side;
  /** The resistance in Ω. */
  R: number;
  /** Put in series with the cell so that the needle stays on its scale, in Ω. */
  rheostat: number;
  /** Key and leads between the middle strip and the jockey, the key closed, in Ω. */
  tap: number;
}

/**
 * Current in A through the galvanometer in its gap, the key to the jockey open or closed, the jockey at a scale reading in
 * cm; positive from left to right. Kirchhoff's laws for the branches of the bridge, multiplied out; with the key open the
 * branch to the jockey is divided out first.
 */
export function armCurrent(bridge: Bridge, setting: EqualDeflection, key: 'open' | 'closed', jockey: number): number {
  const { left: p, right: q, wireLeft: a, wireRight: b, galvanometer: t, cell: r, emf } = branches(bridge, setting, jockey);
  if (key === 'open') return (emf * (a + b)) / (r * (p + q + a + b) + (p + q) * (a + b));
  const onward = setting.known === 'left' ? b * (p + a) : a * (q + b);
  const loops = r * (t * (p + q + a + b) + (p + a) * (q + b));
  return (emf * (t * (a + b) + onward)) / (loops + t * (p + q) * (a + b) + p * q * (a + b) + a * b * (p + q));
}

/**
 * The stretch of the scale in cm where closing the key changes the deflection too little to be seen: right of the balance
 * current leaves the middle strip for the jockey, left of it current comes in. The change rises all along the wire as long
 * as key and leads have a small resistance beside the gaps.
 */
export function equalDeflectionStretch(bridge: Bridge, setting: EqualDeflection): Stretch {
  const sense = (setting.known === 'left' ? -1 : 1) * (bridge.cell.emf < 0 ? -1 : 1);
  return unseenStretch(bridge, (jockey) => sense * (armCurrent(bridge, setting, 'closed', jockey) - armCurrent(bridge, setting, 'open', jockey)));
}

/** The rheostat in Ω that lets the needle stand at so many divisions with the key open; 0 where the cell alone does not bring it so far. */
export function rheostatFor(bridge: Bridge, setting: Omit<EqualDeflection, 'rheostat'>, divisions: number): number {
  const { left, right, wireLeft, wireRight, cell, emf } = branches(bridge, { ...setting, rheostat: 0 }, 0);
  const wire = wireLeft + wireRight;
  const wanted = divisions * Math.abs(bridge.galvanometer.perDivision);
  const all = ((Math.abs(emf) * wire) / wanted - (left + right) * wire) / (left + right + wire);
  return Math.max(0, all - cell);
}

/** The branches with the galvanometer's coil in its gap, and the key with its leads where it stands otherwise. */
function branches(bridge: Bridge, { known, R, rheostat, tap }: EqualDeflection, jockey: number): Circuit {
  const { coil } = bridge.galvanometer;
  const { left, right, wireLeft, wireRight, cell, emf } = circuit(bridge, known === 'left' ? { left: R, right: coil } : { left: coil, right: R }, jockey);
  return { left, right, wireLeft, wireRight, galvanometer: tap, cell: cell + rheostat, emf };
}
