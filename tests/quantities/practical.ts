import { type KnownGap, bridgeSteps } from '../../generators/experiments/bridge-steps.ts';
import { resistivitySteps } from '../../generators/experiments/resistivity-steps.ts';
import { type ZeroError, screwGaugeSteps } from '../../generators/experiments/screw-gauge-steps.ts';
import type { Readings } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import type { Step } from '../../generators/quantities/step.ts';
import { round } from '../../generators/quantities/written.ts';
import type { Random } from '../../generators/random.ts';

/** The variants of the resistivity practical. */
export interface Variant {
  known: KnownGap;
  zero: ZeroError;
}

export const variants: Variant[] = (['left', 'right'] as const).flatMap((known) =>
  (['none', 'positive', 'negative'] as const).map((zero) => ({ known, zero })),
);

export const variantName = ({ known, zero }: Variant) => `known ${known}, zero error ${zero}`;

export function stepsOf({ known, zero }: Variant): Step[] {
  return [...bridgeSteps(known), ...screwGaugeSteps(zero), ...resistivitySteps()];
}

export const programOf = (variant: Variant) => program(stepsOf(variant));

const gauges = [
  { pitch: '0.5', divisions: 50 },
  { pitch: '1', divisions: 100 },
];

/** Invented readings of the kind that a careful student takes: X from 1.5 to 9 Ω, a wire of 0.2 to 1.2 mm. */
export function randomReadings(random: Random, { known, zero }: Variant): Readings {
  const X = random.between(1.5, 9);
  const R = Array.from({ length: random.integer(3, 6) }, () => round(X * random.between(0.7, 1.4), { decimals: 1 }, 'even'));
  const l = R.map((ohms) => {
    const fromLeft = known === 'left' ? (100 * Number(ohms)) / (Number(ohms) + X) : (100 * X) / (Number(ohms) + X);
    return round(fromLeft + random.between(-0.3, 0.3), { decimals: 1 }, 'even');
  });
  const { pitch, divisions } = random.pick(gauges);
  const n0 = { none: 0, positive: random.integer(1, 5), negative: divisions - random.integer(1, 5) }[zero];
  const hundredths = random.integer(20, 120);
  const perTurn = 100 * Number(pitch);
  const seen = Array.from({ length: 2 * random.integer(4, 5) }, () => hundredths + random.integer(-1, 1));
  return {
    W: '100',
    R,
    l,
    pitch,
    N: String(divisions),
    n0: String(n0),
    msr: seen.map((d) => round(Math.floor(d / perTurn) * Number(pitch), { decimals: 1 }, 'even')),
    n: seen.map((d) => String(d % perTurn)),
    L: round(random.between(30, 150), { decimals: 1 }, 'even'),
    rhoTable: random.pick(['4.9e-7', '1.09e-6', '4.82e-7', '4.4e-7']),
  };
}

/** The sheet that the usual slips are worked on: R = 2.0 Ω, l = 43.2 cm, L = 60.0 cm, d = 0.38 mm, all rows alike. */
export function plainReadings({ known, zero }: Variant): Readings {
  const three = (value: string) => [value, value, value];
  return {
    W: '100',
    R: three('2.0'),
    l: three(known === 'left' ? '43.2' : '56.8'),
    pitch: '0.5',
    N: '50',
    n0: { none: '0', positive: '3', negative: '47' }[zero],
    msr: three('0.0'),
    n: three({ none: '38', positive: '41', negative: '35' }[zero]),
    L: '60.0',
    rhoTable: '4.9e-7',
  };
}
