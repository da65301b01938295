import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { Bridge, Gaps, Side } from '../../generators/apparatus/bridge.ts';

/** Resistances of the wire on both sides of the jockey, ends included, in Ω. */
export type Arms = Record<Side, number>;

/** A part of a SPICE deck. Open parts are left out; a short is a source of 0 V, since SPICE takes no 0 Ω. */
export function resistor(name: string, from: string, to: string, ohms: number): string[] {
  if (ohms === Infinity) return [];
  return [ohms === 0 ? `V${name} ${from} ${to} DC 0` : `R${name} ${from} ${to} ${ohms}`];
}

/** One bridge as a part of a SPICE deck, its names ending in `tag`. V_g carries the current from the middle strip to the jockey. */
export function netlist(bridge: Bridge, gaps: Gaps, arms: Arms, tag: string): string[] {
  const node = (name: string) => `${name}${tag}`;
  const gap = (side: Side, from: string, to: string) => {
    const { inSeries, across } = bridge.terminals[side];
    return [
      ...resistor(`joint${side}${tag}`, from, node(`put${side}`), inSeries),
      ...resistor(`put${side}${tag}`, node(`put${side}`), to, gaps[side]),
      ...resistor(`across${side}${tag}`, from, to, across),
    ];
  };
  return [
    `Vcell${tag} ${node('pole')} 0 DC ${bridge.cell.emf}`,
    ...resistor(`cell${tag}`, node('pole'), node('left'), bridge.cell.internal),
    ...gap('left', node('left'), node('middle')),
    ...gap('right', node('middle'), '0'),
    ...resistor(`wireleft${tag}`, node('left'), node('jockey'), arms.left),
    ...resistor(`wireright${tag}`, node('jockey'), '0', arms.right),
    ...resistor(`coil${tag}`, node('middle'), node('coil'), bridge.galvanometer.coil),
    ...resistor(`guard${tag}`, node('coil'), node('meter'), bridge.protective),
    `V_g${tag} ${node('meter')} ${node('jockey')} DC 0`,
  ];
}

/** A deck that prints the galvanometer current of every bridge in it. */
function deck(parts: readonly string[][]): string {
  const prints = parts.map((_, i) => `print i(v_g${i})`);
  return ['metre bridges', ...parts.flat(), '.control', 'op', 'set numdgt=16', ...prints, 'quit', '.endc', '.end', ''].join('\n');
}

/** The currents in A through V_g0, V_g1 … of these circuits, in one run of ngspice. */
export function simulatedCurrents(parts: readonly string[][]): number[] {
  const folder = mkdtempSync(join(tmpdir(), 'slidewire-test-'));
  try {
    const file = join(folder, 'bridges.cir');
    writeFileSync(file, deck(parts));
    return printedCurrents(execFileSync('ngspice', ['-b', file], { encoding: 'utf8', stdio: 'pipe' }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Equal to a part of the current, or to what arithmetic loses where two large ones cancel. */
export function expectCurrents(own: readonly number[], outside: readonly number[], relative: number): void {
  expect(outside).toHaveLength(own.length);
  own.forEach((current, i) => {
    expect(Math.abs(current - outside[i]!), `circuit ${i}: ${current} A, ngspice ${outside[i]} A`).toBeLessThanOrEqual(relative * Math.abs(current) + 1e-14);
  });
}

/** The currents in A from what ngspice printed, by number. */
function printedCurrents(output: string): number[] {
  const currents: number[] = [];
  for (const [, place, value] of output.matchAll(/^i\(v_g(\d+)\) = (\S+)$/gm)) currents[Number(place)] = Number(value);
  return currents;
}
