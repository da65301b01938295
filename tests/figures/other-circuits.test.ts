import { describe, expect, it } from 'vitest';
import { careyFosterCircuit } from '../../generators/figures/carey-foster-circuit.ts';
import { kelvinCircuit } from '../../generators/figures/kelvin-circuit.ts';
import { labels, words } from './read-svg.ts';

const at = (svg: string, text: string) => labels(svg).find((label) => label.text === text)!.at;
const symbol = 'rectangle' as const;

describe('careyFosterCircuit', () => {
  const svg = careyFosterCircuit({ id: 'c', symbol, named: true }, words);

  it('has the compared resistances in the outer gaps and the ratio arms in the inner ones', () => {
    const order = ['X', 'P', 'Q', 'Y'];
    expect([...order].sort((a, b) => at(svg, a)[0]! - at(svg, b)[0]!)).toEqual(order);
    expect(svg).toContain('between the strip that parts X from P and the strip');
  });

  it('names nothing when the student is to label it', () => {
    const lettering = labels(careyFosterCircuit({ id: 'c', symbol, named: false }, words)).map(({ text }) => text);
    for (const name of Object.values(words.circuit.names)) expect(lettering).not.toContain(name);
  });
});

describe('kelvinCircuit', () => {
  it.each(['left', 'right'] as const)('has the box in the %s gap, the galvanometer in the other and none in the branch to the jockey', (known) => {
    const svg = kelvinCircuit({ id: 'k', known, symbol, named: true }, words);
    expect(at(svg, 'R')[0]! < at(svg, 'G')[0]!).toBe(known === 'left');
    expect(labels(svg).filter(({ text }) => text === 'G')).toHaveLength(1);
    expect(svg).toContain(`connected across the ${known} gap`);
  });

  it('names nothing when the student is to label it', () => {
    const lettering = labels(kelvinCircuit({ id: 'k', known: 'left', symbol, named: false }, words)).map(({ text }) => text);
    for (const name of Object.values(words.circuit.names)) expect(lettering).not.toContain(name);
  });
});
