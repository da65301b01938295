import { readBalance } from '../apparatus/balance.ts';
import { type Box, boxResistance, reseat } from '../apparatus/box.ts';
import type { Bridge, Side } from '../apparatus/bridge.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Ask } from './ask.ts';
import { type Setting, planBridge } from './bridge-plan.ts';

/** The bridge table as a student takes it down. */
export interface BridgeTable {
  R: Written[];
  l: Written[];
}

/** Rows of a bridge table: settings spread over the usable range, each null point found and read inside the window. Undefined where the bench does not give them. */
export function observeBridge(ask: Ask, bridge: Bridge, box: Box, X: number, random: Random, { usable } = planBridge(ask)): BridgeTable | undefined {
  const rows = observeRows(ask, usable, random, (R) => observeNull(ask, bridge, box, R, X, ask.known, random));
  return rows && { R: rows.map(({ R }) => R), l: rows.map(({ read }) => read) };
}

/** Rows at settings spread over the usable ones; a student who finds a null point outside the window sets another resistance. */
export function observeRows<T>(ask: Ask, usable: readonly Setting[], random: Random, observe: (R: Written) => T | undefined): { R: Written; read: T }[] | undefined {
  const rows: { R: Written; read: T }[] = [];
  for (const settings of spread(usable, ask.rows)) {
    const row = first(random.shuffle(settings), ({ R }) => {
      const read = observe(R);
      return read === undefined ? undefined : { R, read };
    });
    if (!row) return undefined;
    rows.push(row);
  }
  return rows;
}

function first<T, A>(list: readonly T[], tried: (one: T) => A | undefined): A | undefined {
  for (const one of list) {
    const found = tried(one);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The null point with R set in one gap, as it is read; undefined where it lies outside the window. The joints stay as they are; the plugs are pressed home each time. */
export function observeNull(ask: Ask, bridge: Bridge, box: Box, R: Written, X: number, known: Side, random: Random): Written | undefined {
  const [low, high] = ask.window;
  const set = boxResistance(reseat(box, ask.bench, random), R);
  const gaps = known === 'left' ? { left: set, right: X } : { left: X, right: set };
  const l = readBalance(bridge, ask.bench, gaps, ask.hands, random);
  return Number(l) >= low && Number(l) <= high ? l : undefined;
}

/** Cuts the usable settings into as many runs as rows are wanted, so that the rows lie apart. */
export function spread(usable: readonly Setting[], rows: number): Setting[][] {
  return Array.from({ length: rows }, (_, row) =>
    usable.slice(Math.floor((row * usable.length) / rows), Math.floor(((row + 1) * usable.length) / rows)),
  );
}
