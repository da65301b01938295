import { describe, expect, test } from 'vitest';
import { type Readings, at, evaluate, scale, tensInto } from '../../generators/quantities/evaluate.ts';
import { formula } from '../../generators/quantities/formula.ts';
import { mean } from '../../generators/quantities/summary.ts';
import { unit } from '../../generators/quantities/unit.ts';
import { round } from '../../generators/quantities/written.ts';
import { type Variant, plainReadings, programOf, stepsOf } from '../quantities/practical.ts';

/** The value that a slip gives in the first row, the steps before it being right. */
function slipped(id: string, slip: string, variant: Variant, readings: Readings = plainReadings(variant)): number {
  const checked = programOf(variant);
  const step = checked.step(id);
  if (step.kind !== 'relation') throw new Error(`${id} is no relation`);
  const { as } = checked.compiled(id).slips.find((other) => other.id === slip)!;
  const { exact } = evaluate(checked, readings, 'even');
  const value = as.value(as.names.map((name) => scale(at(exact.get(name)!, 0), tensInto(checked, step, name))));
  return step.si ? scale(value, -unit(step.unit).tens) : value;
}

const left: Variant = { known: 'left', zero: 'none' };
const right: Variant = { known: 'right', zero: 'none' };

// Usual slips and the values they give, worked by hand on R = 2.0 Ω, l = 43.2 cm, L = 60.0 cm, d = 0.38 mm. That they
// are usual is common practice, no source.
describe('each slip has its signature', () => {
  test.each<[string, string, Variant, number, string]>([
    ['X', 'ratio inverted', left, 4, '1.521'],
    ['X', 'divided by the whole wire', left, 3, '0.864'],
    ['X', 'rest over whole', left, 4, '1.136'],
    ['X', 'ratio inverted', right, 4, '1.521'],
    ['rho', 'diameter used as radius', left, 4, '1.988e-6'],
    ['rho', 'diameter not squared', left, 3, '0.00131'],
    ['rho', 'length left in centimetres', left, 4, '4.971e-9'],
    ['rho', 'diameter left in millimetres', left, 4, '0.4971'],
  ])('%s, %s (known %o): %d figures, %s', (id, slip, variant, figures, signature) => {
    expect(round(slipped(id, slip, variant), { figures }, 'even')).toBe(signature);
  });

  test('the right values, for comparison: 2.630 Ω and 4.971e-7 Ω m', () => {
    for (const variant of [left, right]) {
      const { exact } = evaluate(programOf(variant), plainReadings(variant), 'even');
      expect(round(exact.get('X')![0]!, { figures: 5 }, 'even')).toBe('2.6296');
      expect(round(exact.get('rho')![0]!, { figures: 4 }, 'even')).toBe('4.971e-7');
    }
  });
});

describe('slips at the screw gauge', () => {
  test.each([
    ['positive', 0.03],
    ['negative', -0.03],
  ] as const)('a %s zero error: ignored, the diameter is off by it; with the wrong sign, by twice as much', (zero, e) => {
    const variant = { known: 'left', zero } as const;
    expect(slipped('d', 'zero error ignored', variant)).toBeCloseTo(0.38 + e, 12);
    expect(slipped('d', 'zero error with the wrong sign', variant)).toBeCloseTo(0.38 + 2 * e, 12);
  });
  test('a negative zero error read forwards is off by a whole turn, N × LC', () => {
    expect(slipped('e', 'negative zero error read forwards', { known: 'left', zero: 'negative' }) - -0.03).toBeCloseTo(50 * 0.01, 12);
  });
  test('a main-scale division missed is half a millimetre less', () => {
    const readings = { ...plainReadings(left), msr: ['0.5', '0.5', '0.5'] };
    expect(slipped('dObs', 'main-scale division missed', left, readings)).toBeCloseTo(0.88 - 0.5, 12);
  });
  test('the least count ten times too large or too small', () => {
    expect(slipped('LC', 'least count ten times too large', left)).toBeCloseTo(0.1, 12);
    expect(slipped('LC', 'least count ten times too small', left)).toBeCloseTo(0.001, 12);
  });
});

test('means taken first: 2.791 in place of 2.502 Ω on R = 1 to 4 Ω, X = 2.5 Ω', () => {
  const readings = { ...plainReadings(left), R: ['1', '2', '3', '4'], l: ['28.6', '44.4', '54.5', '61.5'] };
  const { exact } = evaluate(programOf(left), readings, 'even');
  const step = stepsOf(left).find(({ id }) => id === 'meanX');
  if (step?.kind !== 'summary') throw new Error('meanX is a summary');
  const { names, value } = formula(step.slips!.find(({ id }) => id === 'means taken first')!.as, new Set(exact.keys()));
  expect(round(value(names.map((id) => mean(exact.get(id)!))), { decimals: 3 }, 'even')).toBe('2.791');
  expect(round(exact.get('meanX')![0]!, { decimals: 3 }, 'even')).toBe('2.502');
});
