import { describe, expect, test } from 'vitest';
import { gaugeDiameter } from '../../generators/apparatus/gauges.ts';
import { nominalValue, tableValue, warming } from '../../generators/apparatus/materials.ts';
import { acrossAt, crossSection, makeWire, type Wire, wireResistance } from '../../generators/apparatus/wire.ts';
import { mean, standardDeviation } from '../../generators/quantities/summary.ts';
import { streams } from '../../generators/random.ts';
import { bench, gauges, materials } from './tables.ts';

const plain: Wire = { rho: 49e-8, celsius: 20, alpha: 0, alphaCelsius: 20, diameter: 0.376, ovality: 0, length: 100 };

describe('the resistance of a wire', () => {
  // OpenStax, College Physics 2e: 20.0 m of 12-gauge (2.053 mm) copper, 1.72e-8 Ω m, is 0.104 Ω.
  test('is 0.104 Ω for the copper wire of the OpenStax example', () => {
    const copper = tableValue(materials, 'copper', 'openstax-college');
    const wire = { ...plain, rho: Number(copper.rho), diameter: 2.053, length: 2000 };
    expect(Math.abs(wireResistance(wire, 20) - 0.104)).toBeLessThan(0.0005);
  });

  // ρ · 1 m ÷ (π d²/4) with 49e-8 Ω m, worked by hand.
  test.each([['22', 1.23], ['24', 2.0], ['26', 2.99], ['28', 4.41]])('of 1 m of constantan SWG %s is %f Ω', (number, ohms) => {
    const wire = { ...plain, diameter: Number(gaugeDiameter(gauges, 'SWG', number)) };
    expect(Math.abs(wireResistance(wire, 20) - ohms)).toBeLessThan(0.005);
  });

  test('of a part is that part of the whole', () => {
    expect(wireResistance(plain, 20, 37)).toBeCloseTo(0.37 * wireResistance(plain, 20), 14);
  });

  test('rises with the temperature by α times the resistance at the temperature α refers to', () => {
    const wire = { ...plain, alpha: 0.004, alphaCelsius: 0, celsius: 20 };
    const at = (celsius: number) => wireResistance(wire, celsius);
    expect((at(100) - at(0)) / at(0)).toBeCloseTo(0.4, 12);
    expect(at(20)).toBeCloseTo(wireResistance(plain, 20), 14);
  });

  test('of copper is the same with α of 20 °C as with the α of 0 °C that belongs to it', () => {
    // α₀ = α₂₀ ÷ (1 − 20 α₂₀): 0.00393 becomes 0.00427, worked by hand.
    const zero = 0.00393 / (1 - 20 * 0.00393);
    expect(Math.abs(zero - 0.00427)).toBeLessThan(0.000005);
    for (const celsius of [0, 20, 34, 100])
      expect(warming(zero, 0, 20, celsius)).toBeCloseTo(warming(0.00393, 20, 20, celsius), 12);
  });
});

describe('an oval wire', () => {
  const oval = { ...plain, ovality: 0.02 };

  test('has the cross-section of an ellipse', () => {
    const [greatest, least] = [0.376e-3 * 1.01, 0.376e-3 * 0.99];
    expect(crossSection(oval) / ((Math.PI / 4) * greatest * least)).toBeCloseTo(1, 12);
  });

  test('shows two diameters across each other that average to its mean, neither beyond greatest and least', () => {
    const random = streams('oval').of('places');
    const pairs = Array.from({ length: 2000 }, () => acrossAt(oval, random));
    for (const [one, other] of pairs) {
      expect((one + other) / 2).toBeCloseTo(0.376, 12);
      expect(Math.abs(one - other)).toBeLessThanOrEqual(0.02 * 0.376 + 1e-12);
    }
    const all = pairs.flat();
    // The cosine of an even angle has the mean square 1/2.
    expect(standardDeviation(all) / (0.376 * 0.01 * Math.sqrt(0.5))).toBeCloseTo(1, 1);
  });

  test('that is round shows the same diameter every way', () => {
    expect(acrossAt(plain, streams('oval').of('round'))).toEqual([0.376, 0.376]);
  });
});

describe('wires off the reel', () => {
  const value = nominalValue(materials, 'constantan');
  const wires = Array.from({ length: 3000 }, (_, i) =>
    makeWire(bench, value, { diameter: 0.376, length: 60 }, streams('reel').of(i)),
  );

  test('have the spread of the batch round the nominal resistivity', () => {
    const rhos = wires.map(({ rho }) => rho / 49e-8);
    expect(Math.abs(mean(rhos) - 1)).toBeLessThan((4 * bench.wire.batchSpread) / Math.sqrt(3000));
    expect(standardDeviation(rhos) / bench.wire.batchSpread).toBeCloseTo(1, 1);
  });

  test('keep their diameter, ovality and α inside the limits', () => {
    for (const { diameter, ovality, alpha } of wires) {
      expect(Math.abs(diameter / 0.376 - 1)).toBeLessThanOrEqual(bench.wire.diameterTolerance + 1e-12);
      expect(ovality).toBeGreaterThanOrEqual(0);
      expect(ovality).toBeLessThanOrEqual(bench.wire.ovality);
      expect(Math.abs(alpha)).toBeLessThanOrEqual(Number(value.alpha!.spread));
    }
  });
});
