import { type Box, makeBox } from '../apparatus/box.ts';
import { type Bridge, type Gaps, type Side, makeBridge } from '../apparatus/bridge.ts';
import type { Range } from '../apparatus/bench.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';

/** Boxes that may stand on a bench; the ratio arms of a bridge with four gaps are two boxes, set alike. */
export type BoxName = 'box' | 'second box' | 'ratio arms';

/** What shows a reading that goes with a null point. */
export type Shows = 'scale' | 'rule' | 'thermometer' | BoxName;

/** What can be changed beside the bridge: the length between the clips in cm, the temperature of the bath in °C. */
export interface Surroundings {
  length: number;
  celsius: number;
}

/** What is put in a gap: a box, or a thing with a name in content and its resistance in Ω. */
export type Put = Exclude<BoxName, 'ratio arms'> | { name: string; ohms(at: Surroundings): number };

/** Readings of one row that are taken together, with `first` in one of the gaps: by quantity, what shows it. One of them is shown by the scale. */
export interface Taken {
  firstIn: Side;
  reads: Readonly<Record<string, Shows>>;
}

/** Two things in the gaps of the bridge (in its outer ones, where it has four), and what is read with them. */
export interface Pair {
  first: Put;
  second: Put;
  taken: readonly Taken[];
}

/** What stands on the bench of an experiment with null points: the very apparatus that its readings were taken on. */
export interface Laid {
  bridge: Bridge;
  /** Two boxes under one name are set alike. */
  boxes: Partial<Record<BoxName, readonly Box[]>>;
  pairs: readonly Pair[];
  /** The current in A through the galvanometer, where the circuit is another than the bridge with its galvanometer between middle strip and jockey. */
  flows?(on: Connected): number;
  /** The galvanometer deflects with the jockey lifted, and has no protective resistance: it stands in a gap. */
  isInGap?: true;
  /** Between which lengths in cm the clips can be set. */
  clips?: Range;
  /** Between which temperatures in °C the bath can be kept, and by how much the thermometer errs. */
  bath?: { heated: Range; thermometerError: number };
}

/** A bridge as the student has connected and set it: resistances in Ω in the gaps and in the boxes, the jockey in cm on the scale. */
export interface Connected {
  bridge: Bridge;
  firstIn: Side;
  gaps: Gaps;
  boxes(name: BoxName): number[];
  jockey: number;
  isPressed: boolean;
}

/** The bench of an experiment; `truth` is what its `observe` found behind the readings. */
export type LayBench = (ask: Ask, streams: Streams, truth: Readonly<Record<string, number>>) => Laid;

/** A bridge with one box, and pairs of the box with something else. */
export function withOneBox({ bench }: Ask, streams: Streams, pairs: readonly Omit<Pair, 'first'>[]): Laid {
  return {
    bridge: makeBridge(bench, streams.of('bridge')),
    boxes: { box: [makeBox(bench, streams.of('box'))] },
    pairs: pairs.map((pair) => ({ first: 'box', ...pair })),
  };
}

/** The box and one wire of X ohms. */
export const boxAndWire =
  (taken: (ask: Ask) => readonly Taken[]): LayBench =>
  (ask, streams, truth) =>
    withOneBox(ask, streams, [{ second: { name: 'wire', ohms: () => truth['X']! }, taken: taken(ask) }]);
