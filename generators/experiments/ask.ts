import type { Bench, Hands } from '../apparatus/bench.ts';
import type { TableValue } from '../apparatus/materials.ts';
import type { Side } from '../apparatus/bridge.ts';

/** A wire to be measured, as it stands in the tables: the real piece differs a little. */
export interface NominalWire {
  /** The value that a real piece is drawn about. */
  made: TableValue;
  /** The accepted value that the sheet names. */
  accepted: TableValue;
  /** The gauge as the teacher wrote it: 'SWG 28', '0.38 mm'. */
  gauge: string;
  /** In mm. */
  diameter: number;
  /** Between the terminals, in cm. */
  length: number;
}

/** What one set of readings is asked for. */
export interface Ask {
  wire: NominalWire;
  /** The student's further wires, where the experiment takes more than one. */
  others: readonly NominalWire[];
  /** What the order's source says of every material that it has. */
  candidates: readonly TableValue[];
  /** The apparatus, with the order's own resistance box. */
  bench: Bench;
  /** The gap that holds the resistance box. */
  known: Side;
  rows: number;
  /** Where null points are wanted, in cm from the left end. */
  window: readonly [low: number, high: number];
  hands: Hands;
}
