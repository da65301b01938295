import type { Bench } from '../apparatus/bench.ts';
import type { Ask } from './ask.ts';
import { type Setting, nominalResistance, planBridge } from './bridge-plan.ts';
import type { Plan } from './plan.ts';

/** Where a null point counts as near an end, in cm; outside a window that lies inside 30 to 70, and seen by the check. Common practice, no source. */
const NEAR_ENDS = [
  [15, 25],
  [75, 85],
] as const;
const WIDEST: readonly [low: number, high: number] = [30, 70];

/** Divisions that the needle of a sound circuit should move by near the ends, for a fault to be told from it; from memory, order of size. */
const LEAST_DEFLECTION = 10;

/** Settings of the box that put the null point inside the window, or near an end. */
export function settingsFor(ask: Ask, suitable: boolean): Setting[] {
  const windows = suitable ? [ask.window] : NEAR_ENDS;
  return windows.flatMap((window) => planBridge({ ...ask, window }).usable);
}

/** A setting inside the window, one near an end, and what else a fault needs to be seen. */
export function checkPlan(ask: Ask): Plan {
  const X = nominalResistance(ask.wire);
  return { balances: [{ X, usable: settingsFor(ask, true), wanted: 1 }], unfit: [...tooWide(ask), ...noneNearAnEnd(ask), ...jointHidden(ask.bench, X), ...needleTooSlow(ask.bench)] };
}

function tooWide({ window: [low, high] }: Ask): string[] {
  const [least, greatest] = WIDEST;
  return low >= least && high <= greatest ? [] : [`a window of ${low}-${high} cm leaves no null point that is near an end; give one inside ${least}-${greatest}`];
}

const noneNearAnEnd = (ask: Ask) => (settingsFor(ask, false).length > 0 ? [] : ['the box has no setting that puts the null point near an end of the wire; give it a larger or a finer plug']);

/** A bad joint must drive the null point away by 10 cm and more, which it does in a wire that has no more resistance than it. */
function jointHidden({ bridge: { looseJoint: [, most] } }: Bench, X: number): string[] {
  return X <= most ? [] : [`the wire has about ${Math.round(X)} Ω, beside which a bad joint of at most ${most} Ω hardly shows; take a wire of less`];
}

/** Near an end, 40 cm from the null, lie about two fifths of the cell's voltage. */
function needleTooSlow({ cell, galvanometer: { protective, coil, perDivision } }: Bench): string[] {
  const divisions = (0.4 * cell.emf[0]) / (protective + coil[1]) / perDivision[1];
  return divisions >= LEAST_DEFLECTION ? [] : [`with a protective resistance of ${protective} Ω the needle moves by only ${Math.round(divisions)} divisions near the ends; take a smaller one, so that it moves by ${LEAST_DEFLECTION} and more`];
}
