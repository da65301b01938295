import { describe, expect, test } from 'vitest';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import type { Computed, Relation, Step } from '../../generators/quantities/step.ts';
import { conversionLines, formulaLine, quantityLine, symbolLine, workedLine } from '../../generators/quantities/working.ts';
import { round } from '../../generators/quantities/written.ts';
import { streams } from '../../generators/random.ts';
import { plainReadings, programOf, randomReadings, variantName, variants } from './practical.ts';
import { readTex } from './tex-reader.ts';
import { words } from './words.ts';

const computed = (steps: readonly Step[]) => steps.filter((step): step is Computed => step.kind === 'relation' || step.kind === 'summary');
const named = (steps: readonly Step[], id: string) => computed(steps).find((step) => step.id === id)!;

describe('the numbers that are put in work out to the result that is written', () => {
  test.each(variants.map((variant) => ({ name: variantName(variant), variant })))('$name', ({ name, variant }) => {
    const checked = programOf(variant);
    const values = evaluate(checked, randomReadings(streams('working').of(name), variant), 'even');
    for (const step of computed(checked.steps)) {
      values.written.get(step.id)!.forEach((written, row) => {
        const [, numbers] = workedLine(checked, step, row, values, words).tex.split(' = ');
        expect(round(readTex(numbers!), step.digits, 'even'), `${step.id}[${row}] = ${numbers}`).toBe(written);
      });
    }
  });
});

describe('lines of the practical', () => {
  const variant = { known: 'left', zero: 'negative' } as const;
  const checked = programOf(variant);
  const values = evaluate(checked, plainReadings(variant), 'even');
  const line = (id: string) => workedLine(checked, named(checked.steps, id), 0, values, words);

  test('a negative zero error is taken away in brackets, seen and heard', () => {
    expect(line('d').tex).toBe('d = 0.350 - \\left({-0.03}\\right) = 0.380\\;\\mathrm{mm}');
    expect(line('d').spoken).toBe('diameter = 0.350 - (minus 0.03) = 0.380 millimetres');
  });
  test('a converted diameter is squared in brackets', () => {
    expect(line('rho').tex).toContain('\\left(0.380 \\times 10^{-3}\\right)^{2}');
    expect(line('rho').spoken).toContain('(0.380 times ten to the minus 3) squared');
  });
  test('a mean lists its values over their number', () => {
    expect(line('meanX').tex).toBe(`${symbolLine(checked, 'meanX', words).tex} = \\frac{2.63 + 2.63 + 2.63}{3} = 2.63\\;\\Omega`);
  });
  test('the formula stands in symbols', () => {
    expect(formulaLine(checked, named(checked.steps, 'rho'), words).spoken).toBe('rho = frac(pi * diameter squared * mean X, 4 * L)');
  });
  test('a mean is read aloud by the words of what it is the mean of', () => {
    const spoken = { ...words, symbols: { ...words.symbols, dObs: 'observed diameter' } };
    for (const made of [formulaLine(checked, named(checked.steps, 'meanD'), spoken), workedLine(checked, named(checked.steps, 'meanD'), 0, values, spoken)])
      expect(made.spoken).toContain('mean of observed diameter');
  });
  test('each quantity in another unit than SI is converted in sight, and no other', () => {
    const lines = conversionLines(checked, named(checked.steps, 'rho') as Relation, values, words);
    expect(lines.map(({ tex }) => tex)).toEqual([
      'd = 0.380\\;\\mathrm{mm} = 0.380 \\times 10^{-3}\\;\\mathrm{m}',
      'L = 60.0\\;\\mathrm{cm} = 0.600\\;\\mathrm{m}',
    ]);
    expect(conversionLines(checked, named(checked.steps, 'X') as Relation, values, words)).toEqual([]);
  });
});

test('a conversion ends in the coherent unit of its quantity, not always in metres', () => {
  const checked = program([
    { kind: 'reading', id: 's', tex: 's', unit: 'mΩ' },
    { kind: 'relation', id: 'S', tex: 'S', unit: 'Ω', as: '2 * s', si: true, digits: { figures: 3 } },
  ]);
  const values = evaluate(checked, { s: '20.0' }, 'even');
  const [line] = conversionLines(checked, named(checked.steps, 'S') as Relation, values, words);
  expect(line!.tex).toMatch(/= 0\.0200\\;\\Omega$/);
});

test.each([
  ['2.63', 'Ω', '2.63\\;\\Omega', '2.63 ohms'],
  ['50', '', '50', '50'],
])('the value %s in %s', (written, unit, tex, spoken) => {
  expect(quantityLine(written, unit, words)).toEqual({ tex, spoken });
});
