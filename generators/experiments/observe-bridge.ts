import { readBalance } from '../apparatus/balance.ts';
import { type Box, boxResistance, reseat } from '../apparatus/box.ts';
import type { Bridge } from '../apparatus/bridge.ts';
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
export function observeBridge(ask: Ask, bridge: Bridge, box: Box, X: number, random: Random): BridgeTable | undefined {
  const table: BridgeTable = { R: [], l: [] };
  for (const settings of spread(planBridge(ask).usable, ask.rows)) {
    const row = firstInWindow(ask, random.shuffle(settings), bridge, box, X, random);
    if (!row) return undefined;
    table.R.push(row.R);
    table.l.push(row.l);
  }
  return table;
}

/** Cuts the usable settings into as many runs as rows are wanted, so that the rows lie apart. */
function spread(usable: readonly Setting[], rows: number): Setting[][] {
  return Array.from({ length: rows }, (_, row) =>
    usable.slice(Math.floor((row * usable.length) / rows), Math.floor(((row + 1) * usable.length) / rows)),
  );
}

/** A student who finds the null point outside the window sets another resistance. The joints stay as they are; the plugs are pressed home each time. */
function firstInWindow(ask: Ask, settings: Setting[], bridge: Bridge, box: Box, X: number, random: Random): { R: Written; l: Written } | undefined {
  const [low, high] = ask.window;
  for (const { R } of settings) {
    const known = boxResistance(reseat(box, ask.bench, random), R);
    const gaps = ask.known === 'left' ? { left: known, right: X } : { left: X, right: known };
    const l = readBalance(bridge, ask.bench, gaps, ask.hands, random);
    if (Number(l) >= low && Number(l) <= high) return { R, l };
  }
  return undefined;
}
