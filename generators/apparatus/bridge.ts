import type { Random } from '../random.ts';
import type { Bench } from './bench.ts';
import { type Circuit, galvanometerCurrent } from './circuit.ts';
import { draw } from './draw.ts';
import { bounded } from './numeric.ts';
import { type Profile, resistanceShare } from './profile.ts';

export type Side = 'left' | 'right';

/** Resistances in Ω put into the two gaps; Infinity where a gap is left open, 0 where its terminals are joined. */
export type Gaps = Readonly<Record<Side, number>>;

/** What the terminals of a gap add to the resistance that is put in. */
export interface Terminals {
  /** Joints and short leads, in Ω. */
  inSeries: number;
  /** A bridge of metal across the gap, in Ω; Infinity when there is none. */
  across: number;
}

/** A metre bridge with all its imperfections. Places along it are readings of its scale, in cm from the left. */
export interface Bridge {
  /** Length of the wire in cm, and of its scale. */
  length: number;
  /** Mean resistance of the wire in Ω per cm. */
  ohmsPerCm: number;
  profile: Profile;
  /** Resistance of strips and soldering at the ends, in cm of the wire. */
  endCorrection: Readonly<Record<Side, number>>;
  /** How far right of the wire's left end the zero of the scale lies, in cm. */
  scaleOffset: number;
  terminals: Readonly<Record<Side, Terminals>>;
  /** In V and Ω; the positive pole is at the left strip. */
  cell: { emf: number; internal: number };
  /** Coil in Ω, current for one division in A, divisions on each side, least deflection that is seen. */
  galvanometer: { coil: number; perDivision: number; divisions: number; leastSeen: number };
  /** Resistance in Ω in series with the galvanometer: 0 once the protective resistance is taken out. */
  protective: number;
}

/** One bridge of the bench's kind, in working order, the protective resistance out. */
export function makeBridge(bench: Bench, random: Random): Bridge {
  const { bridge, cell, galvanometer } = bench;
  const bow = random.between(-1, 1);
  return {
    length: bridge.wireLength,
    ohmsPerCm: draw(bridge.wireResistance, random),
    profile: {
      a: bridge.unevenness * bow,
      b: bridge.unevenness * (1 - Math.abs(bow)) * random.between(-1, 1),
    },
    endCorrection: { left: draw(bridge.endCorrection, random), right: draw(bridge.endCorrection, random) },
    scaleOffset: draw(bridge.scaleOffset, random),
    terminals: joined(bench, random),
    cell: { emf: draw(cell.emf, random), internal: draw(cell.internal, random) },
    galvanometer: {
      coil: draw(galvanometer.coil, random),
      perDivision: draw(galvanometer.perDivision, random),
      divisions: galvanometer.divisions,
      leastSeen: galvanometer.leastSeen,
    },
    protective: 0,
  };
}

/** The same bridge with its protective resistance put in. */
export function protectedBridge(bridge: Bridge, bench: Bench): Bridge {
  return { ...bridge, protective: bench.galvanometer.protective };
}

/** Galvanometer current in A with the jockey at a scale reading in cm; positive from the middle strip to the jockey. */
export function current(bridge: Bridge, gaps: Gaps, jockey: number): number {
  return galvanometerCurrent(circuit(bridge, gaps, jockey));
}

/**
 * Deflection in divisions with the jockey at a scale reading in cm, not limited to the galvanometer's scale.
 * To the right when positive: on a bridge connected as usual the needle goes right when the jockey is right of the null.
 */
export function deflection(bridge: Bridge, gaps: Gaps, jockey: number): number {
  return current(bridge, gaps, jockey) / bridge.galvanometer.perDivision;
}

/** The resistances of all branches with the jockey at a scale reading in cm. Beyond the wire's end it stands on the end. */
export function circuit(bridge: Bridge, gaps: Gaps, jockey: number): Circuit {
  const { length, ohmsPerCm, profile, endCorrection, cell, galvanometer, protective } = bridge;
  const share = resistanceShare(profile, bounded((jockey + bridge.scaleOffset) / length, 0, 1));
  return {
    left: gapResistance(bridge.terminals.left, gaps.left),
    right: gapResistance(bridge.terminals.right, gaps.right),
    wireLeft: ohmsPerCm * (endCorrection.left + length * share),
    wireRight: ohmsPerCm * (endCorrection.right + length * (1 - share)),
    galvanometer: galvanometer.coil + protective,
    cell: cell.internal,
    emf: cell.emf,
  };
}

/** Resistance in Ω between the strips on both sides of a gap. */
export function gapResistance({ inSeries, across }: Terminals, put: number): number {
  return parallel(inSeries + put, across);
}

/** Resistance of two in parallel, in Ω; either may be 0 or Infinity. */
export function parallel(one: number, other: number): number {
  if (one === Infinity) return other;
  if (other === Infinity) return one;
  return one + other === 0 ? 0 : (one * other) / (one + other);
}

function joined({ bridge }: Bench, random: Random): Record<Side, Terminals> {
  const joints = () => {
    let inSeries = 0;
    for (let i = 0; i < bridge.jointsPerGap; i++) inSeries += draw(bridge.joint, random);
    return { inSeries, across: Infinity };
  };
  return { left: joints(), right: joints() };
}
