import { describe, expect, it } from 'vitest';
import { experiments } from '../../generators/experiments/index.ts';
import { mathmlOf } from '../../generators/practice/tex.ts';
import { mathml } from '../../generators/sheets/mathml.ts';
import { formulasOn } from './corpus.ts';

describe('MathML without KaTeX', () => {
  it.each(Object.keys(experiments))('is the same as with it for every formula on the keys of %s', (id) => {
    const formulas = [...formulasOn(id, 15)].filter((tex) => tex !== '' && !tex.includes('gathered'));
    expect(formulas.length).toBeGreaterThan(10);
    for (const tex of formulas) expect(mathmlOf(tex), tex).toBe(mathml(tex));
  });

  it.each(['\\sqrt{a^{2} + b}', '-3.5 \\times 10^{-7}', 'x_{1}^{2}', '{}^{\\circ}\\mathrm{C}', '\\mathrm{k}\\Omega', '\\Omega/\\mathrm{cm}'])('is the same for %s', (tex) => {
    expect(mathmlOf(tex)).toBe(mathml(tex));
  });
});
