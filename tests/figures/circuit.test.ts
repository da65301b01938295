import { describe, expect, it } from 'vitest';
import { bridgeCircuit, fourArmCircuit } from '../../generators/figures/circuit.ts';
import { labels, polylines, words } from './read-svg.ts';

const at = (svg: string, text: string) => labels(svg).find((label) => label.text === text)!.at[0];
const symbol = 'rectangle' as const;

describe('bridgeCircuit', () => {
  it('puts the known resistance and its name in the gap asked for', () => {
    const left = bridgeCircuit({ id: 'c', known: 'left', symbol, named: true }, words);
    const right = bridgeCircuit({ id: 'c', known: 'right', symbol, named: true }, words);
    expect(at(left, 'R')).toBeLessThan(at(left, 'X'));
    expect(at(left, words.circuit.names.known)).toBeLessThan(at(left, words.circuit.names.unknown));
    expect(at(right, 'R')).toBeGreaterThan(at(right, 'X'));
    expect(at(right, words.circuit.names.known)).toBeGreaterThan(at(right, words.circuit.names.unknown));
    expect(right).toContain('X is connected across the left gap, R across the right gap');
  });

  it('lays the scale under the wire, from one copper leg to the other', () => {
    const svg = bridgeCircuit({ id: 'c', known: 'left', symbol, named: true }, words);
    const inner = (strip: string) => [...new Set(polylines(svg, strip)[0]!.map(([x]) => x))].sort((a, b) => a - b)[1];
    expect([inner('left-strip'), inner('right-strip')]).toEqual([at(svg, '0'), at(svg, '100')]);
  });

  it('names nothing when the student is to label it', () => {
    const svg = bridgeCircuit({ id: 'c', known: 'left', symbol, named: false }, words);
    const lettering = labels(svg).map(({ text }) => text);
    for (const name of Object.values(words.circuit.names)) expect(lettering).not.toContain(name);
  });

  it('writes other symbols in the gaps', () => {
    const svg = bridgeCircuit({ id: 'c', known: 'left', symbol, named: true, unknownSymbol: 'r₁ + r₂' }, words);
    expect(at(svg, 'r₁ + r₂')).toBeGreaterThan(at(svg, 'R'));
    expect(labels(svg).map(({ text }) => text)).not.toContain('X');
  });
});

describe('fourArmCircuit', () => {
  it('has the arms in the order of the bridge', () => {
    const svg = fourArmCircuit({ id: 'f', known: 'right', symbol: 'zigzag' }, words);
    expect(at(svg, 'X')).toBeLessThan(at(svg, 'R'));
    expect(at(svg, 'l')).toBeLessThan(at(svg, '100 cm − l'));
  });
});
