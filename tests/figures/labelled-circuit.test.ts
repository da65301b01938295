import { describe, expect, it } from 'vitest';
import { labelledBridge, labelledDiamond } from '../../generators/figures/labelled-circuit.ts';
import { labels, words } from './read-svg.ts';

const symbol = 'rectangle' as const;
const one = (label: string) => ({ join: 'one' as const, labels: [label] });
const at = (svg: string, text: string) => labels(svg).find((label) => label.text === text)!.at;

describe('labelledBridge', () => {
  const shunted = labelledBridge({ id: 'b', symbol, gaps: [one('R = 6.0 Ω'), { join: 'parallel', labels: ['X', 'S = 20 Ω'] }], length: 'l₂ = 44.5 cm', cell: 'E = 2.0 V' }, words);

  it('writes every label, the left gap left of the right one and the shunt above its resistor', () => {
    expect(labels(shunted.svg).map(({ text }) => text)).toEqual(expect.arrayContaining(['R = 6.0 Ω', 'X', 'S = 20 Ω', 'l₂ = 44.5 cm', 'E = 2.0 V', 'G']));
    expect(at(shunted.svg, 'R = 6.0 Ω')[0]).toBeLessThan(at(shunted.svg, 'X')[0]!);
    expect(at(shunted.svg, 'S = 20 Ω')[1]).toBeLessThan(at(shunted.svg, 'X')[1]!);
  });

  it('says in words what is joined to what', () => {
    expect(shunted.seen).toContain('hold: R = 6.0 Ω; X in parallel with S = 20 Ω.');
    expect(shunted.seen).toContain('The cell is marked E = 2.0 V.');
  });

  it('has two in series side by side, and with four gaps the cell above them', () => {
    const series = labelledBridge({ id: 's', symbol, gaps: [{ join: 'series', labels: ['P', 'p'] }, one('Q')], length: 'l' }, words);
    expect(at(series.svg, 'P')[0]).toBeLessThan(at(series.svg, 'p')[0]!);
    expect(at(series.svg, 'P')[1]).toBe(at(series.svg, 'p')[1]);
    const four = labelledBridge({ id: 'f', symbol, gaps: ['X', 'P', 'Q', 'Y'].map(one), length: 'l₁', cell: 'E' }, words);
    expect(at(four.svg, 'E')[1]).toBeLessThan(at(four.svg, 'X')[1]!);
    expect(four.seen).toContain('Carey Foster');
  });

  it('keeps what stands in it inside its frame', () => {
    for (const { svg } of [shunted, labelledBridge({ id: 'w', symbol, gaps: [one('P = 127.5 Ω'), one('Q = 127.5 Ω')], length: 'l = 40.0 cm' }, words)]) {
      const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!;
      for (const { at: [x, y] } of labels(svg)) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(Number(width));
        expect(y).toBeGreaterThan(2);
        expect(y).toBeLessThan(Number(height));
      }
    }
  });
});

describe('labelledDiamond', () => {
  const { svg, seen } = labelledDiamond({ id: 'd', symbol, arms: [one('P'), one('Q'), one('R'), { join: 'parallel', labels: ['S', 'T'] }] }, words);

  it('has P and Q in the upper branch, R and S in the lower, and the shunt outside', () => {
    expect(at(svg, 'P')[1]).toBeLessThan(at(svg, 'R')[1]!);
    expect(at(svg, 'P')[0]).toBeLessThan(at(svg, 'Q')[0]!);
    expect(at(svg, 'T')[1]).toBeGreaterThan(at(svg, 'S')[1]!);
    expect(seen).toContain('The lower branch holds: R; S in parallel with T.');
  });
});
