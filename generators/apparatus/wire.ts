import type { Random } from '../random.ts';
import type { Bench } from './bench.ts';
import { within } from './draw.ts';
import { type TableValue, warming } from './materials.ts';

/** A wire as it really is. */
export interface Wire {
  /** Resistivity in Ω m at the temperature it was made for, and what it takes to find it at another. */
  rho: number;
  celsius: number;
  /** Per kelvin, referred to alphaCelsius. */
  alpha: number;
  alphaCelsius: number;
  /** Mean of the greatest and the least diameter, in mm. */
  diameter: number;
  /** (greatest − least) ÷ mean diameter. */
  ovality: number;
  /** Between the terminals, in cm. */
  length: number;
}

/** A piece of wire off the reel: the batch, the drawing and the cutting differ from the nominal values, given in mm and cm. */
export function makeWire(bench: Bench, value: TableValue, nominal: { diameter: number; length: number }, random: Random): Wire {
  const { batchSpread, diameterTolerance, ovality, cutting } = bench.wire;
  return {
    rho: Number(value.rho) * (1 + batchSpread * random.normal()),
    celsius: value.celsius,
    alpha: Number(value.alpha?.value ?? 0) + within(Number(value.alpha?.spread ?? 0), random),
    alphaCelsius: value.alpha?.celsius ?? value.celsius,
    diameter: nominal.diameter * (1 + within(diameterTolerance, random)),
    ovality: random.between(0, ovality),
    length: nominal.length + cutting * random.normal(),
  };
}

/** Resistivity in Ω m at a temperature in °C. */
export function resistivityAt({ rho, celsius, alpha, alphaCelsius }: Wire, at: number): number {
  return rho * warming(alpha, alphaCelsius, celsius, at);
}

/** Cross-section in m²: an ellipse, whose half axes are the mean radius times 1 ± ovality/2. */
export function crossSection({ diameter, ovality }: Wire): number {
  const radius = diameter / 2000;
  return Math.PI * radius * radius * (1 - (ovality * ovality) / 4);
}

/** Resistance in Ω between the terminals at a temperature in °C, or of `length` cm of the wire. */
export function wireResistance(wire: Wire, at: number, length = wire.length): number {
  return (resistivityAt(wire, at) * length) / 100 / crossSection(wire);
}

/**
 * Diameters in mm along two perpendicular directions at one place. The oval lies anyhow:
 * the cosine of twice a random angle comes from a point thrown into the unit circle.
 */
export function acrossAt({ diameter, ovality }: Wire, random: Random): [number, number] {
  const departure = (diameter * ovality * cosineOfTwice(random)) / 2;
  return [diameter + departure, diameter - departure];
}

function cosineOfTwice(random: Random): number {
  for (;;) {
    const x = random.between(-1, 1);
    const y = random.between(-1, 1);
    const square = x * x + y * y;
    if (square > 0 && square <= 1) return (x * x - y * y) / square;
  }
}
