import { makeBox, boxResistance } from '../apparatus/box.ts';
import { type Bridge, type Gaps, makeBridge, protectedBridge } from '../apparatus/bridge.ts';
import { draw } from '../apparatus/draw.ts';
import { withFault } from '../apparatus/faults.ts';
import { type Shown, connectionCheck, needle } from '../apparatus/galvanometer.ts';
import { makeWire, wireResistance } from '../apparatus/wire.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Ask } from './ask.ts';
import { settingsFor } from './circuit-check-plan.ts';
import { type Diagnosis, NEAR_NULL, diagnose, faultsBehind } from './diagnosis.ts';

/** A circuit as the check finds it: the box, and deflections in divisions, to the right positive. */
export interface Tried {
  R: Written;
  left: Written;
  middle: Written;
  right: Written;
}

/** Circuits of one kind that are tried; some joints are too good to be noticed. */
const TRIES = 60;

/** A circuit that the check plainly shows to be what is wanted; `placeOf` is where box and wire put the null point, in cm. Undefined where the bench gave none. */
export function clearCircuit(ask: Ask, wanted: Diagnosis, placeOf: (R: Written) => number, random: Random): Tried | undefined {
  for (let i = 0; i < TRIES; i++) {
    const tried = circuit(ask, wanted, placeOf, random);
    if (isClear(tried, placeOf(tried.R), wanted, ask)) return tried;
  }
  return undefined;
}

function circuit(ask: Ask, wanted: Diagnosis, placeOf: (R: Written) => number, random: Random): Tried {
  const { bench, known } = ask;
  const { R } = random.pick(settingsFor(ask, wanted !== 'unsuitable'));
  const faults = faultsBehind[wanted];
  const sound = makeBridge(bench, random);
  const bridge = faults.length === 0 ? sound : withFault(sound, random.pick(faults), bench, random);
  const box = boxResistance(makeBox(bench, random), R);
  const X = wireResistance(makeWire(bench, ask.wire.made, ask.wire, random), draw(bench.room, random));
  const gaps: Gaps = known === 'left' ? { left: box, right: X } : { left: X, right: box };
  return { R, ...deflections(bridge, ask, gaps, Math.round(placeOf(R))) };
}

/** The needle near both ends and where the null point should be, the protective resistance in. */
function deflections(bridge: Bridge, { bench }: Ask, gaps: Gaps, place: number): Record<'left' | 'middle' | 'right', Written> {
  const ends = connectionCheck(bridge, bench, gaps);
  return { left: signed(ends.left), middle: signed(needle(protectedBridge(bridge, bench), gaps, place)), right: signed(ends.right) };
}

const signed = ({ side, divisions }: Shown): Written => (side === 'left' ? `-${divisions}` : divisions);

/** So plain that half a division or half a centimetre more or less changes nothing. */
function isClear(tried: Tried, place: number, wanted: Diagnosis, { window }: Ask): boolean {
  const [left, middle, right] = [Number(tried.left), Number(tried.middle), Number(tried.right)];
  if (diagnose({ left, middle, right }, place, window) !== wanted) return false;
  if (window.some((end) => Math.abs(place - end) < 1)) return false;
  if (wanted === 'nothing') return true;
  const moved = Math.abs(middle);
  const offNull = wanted === 'left joint' || wanted === 'right joint';
  const oneSided = wanted === 'to the left' || wanted === 'to the right';
  return Math.min(Math.abs(left), Math.abs(right)) >= 1 && (oneSided || (offNull ? moved >= NEAR_NULL.elsewhere : moved <= NEAR_NULL.there));
}
