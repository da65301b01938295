import { boxValues } from '../apparatus/box.ts';
import type { Written } from '../quantities/step.ts';
import type { Ask, NominalWire } from './ask.ts';

/** A setting of the box, and where the ideal bridge balances with it, in cm. */
export interface Setting {
  R: Written;
  l: number;
}

/** What can be done with a wire on this bridge. */
export interface BridgePlan {
  /** The expected resistance in Ω. */
  X: number;
  /** Every setting of the box that balances inside the window, ascending. */
  usable: Setting[];
}

/** Where the ideal bridge balances, in cm from the left end. */
export function idealNull(known: Ask['known'], R: number, X: number): number {
  return (100 * (known === 'left' ? R : X)) / (R + X);
}

export const planBridge = (ask: Ask): BridgePlan => planResistance(ask, nominalResistance(ask.wire));

/** What can be done with a resistance of X ohms. */
export function planResistance({ known, bench, window: [low, high] }: Omit<Ask, 'wire'>, X: number): BridgePlan {
  const usable = boxValues(bench.box.plugs)
    .map((R) => ({ R, l: idealNull(known, Number(R), X) }))
    .filter(({ l }) => l >= low && l <= high);
  return { X, usable };
}

/** A student who takes a single null point wants it near mid-wire. */
export function middleThird(usable: readonly Setting[]): readonly Setting[] {
  const third = Math.floor(usable.length / 3);
  return usable.slice(third, usable.length - third);
}

/** Resistance in Ω of a wire of nominal size by its table value, ρ L / A. */
export function nominalResistance({ made, diameter, length }: NominalWire): number {
  const radius = diameter / 2000;
  return (Number(made.rho) * length) / 100 / (Math.PI * radius * radius);
}
