import type { FaultName } from '../apparatus/faults.ts';
import type { Verdict } from '../quantities/step.ts';

/** What the deflections of a connection check can say; common practice, no source. */
export const diagnoses = ['sound', 'unsuitable', 'reversed', 'to the left', 'to the right', 'nothing', 'left joint', 'right joint'] as const;
export type Diagnosis = (typeof diagnoses)[number];

/** The faults behind each diagnosis; those of one line deflect alike, so that the check cannot tell them apart. */
export const faultsBehind: Record<Diagnosis, readonly FaultName[]> = {
  sound: [],
  unsuitable: [],
  reversed: ['cell reversed', 'galvanometer reversed'],
  'to the left': ['left gap open', 'right gap shorted'],
  'to the right': ['right gap open', 'left gap shorted'],
  nothing: ['cell branch open', 'galvanometer branch open'],
  'left joint': ['left joint loose'],
  'right joint': ['right joint loose'],
};

/** Deflections in divisions, to the right positive: near the left end, where the null point should be, near the right end. */
export interface Deflections {
  left: number;
  middle: number;
  right: number;
}

/** The needle at the expected null point: at most so much where the null is there, at least so much where it is elsewhere, and the border between. */
export const NEAR_NULL = { there: 2, border: 3, elsewhere: 4 } as const;

/**
 * The diagnosis from the deflections as they are read and the place in cm where box and wire put the null point.
 * With the jockey right of the null the needle of a sound circuit goes right.
 */
export function diagnose({ left, middle, right }: Deflections, place: number, [low, high]: readonly [low: number, high: number]): Diagnosis {
  if (left === 0 && middle === 0 && right === 0) return 'nothing';
  if (left <= 0 && right <= 0) return 'to the left';
  if (left >= 0 && right >= 0) return 'to the right';
  if (left > 0) return 'reversed';
  // A gap with too much resistance drives the null away from it, and the jockey stands on its side of the null.
  if (Math.abs(middle) > NEAR_NULL.border) return middle < 0 ? 'left joint' : 'right joint';
  return place < low || place > high ? 'unsuitable' : 'sound';
}

/** The diagnosis of every circuit of a sheet. */
export const diagnosis = (window: readonly [low: number, high: number]): Verdict => ({
  kind: 'verdict',
  id: 'diagnosis',
  per: 'circuits',
  choices: [...diagnoses],
  decide: ({ value }) => diagnose({ left: value('left'), middle: value('middle'), right: value('right') }, value('place'), window),
});
