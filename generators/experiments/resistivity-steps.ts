import type { Relation, Slip, Step } from '../quantities/step.ts';

/** Resistivity from the mean X, the corrected diameter and the length between the terminals, and how far it lies from the table. */
export function resistivitySteps(): Step[] {
  return [...overLength, ...againstTable];
}

/** The length between the terminals, and the resistivity from mean X over it. */
export const overLength: Step[] = [
  { kind: 'reading', id: 'L', tex: 'L', unit: 'cm', on: 'rule' },
  resistivityOf('meanX', ['L'], { id: 'length left in centimetres', as: fraction('pi * d^2 * meanX', '4', '100', 'L'), unconverted: 'L' }),
];

/** The table's value, how far the resistivity lies from it, and whether that can be an error of the readings. */
export const againstTable: Step[] = [
  { kind: 'given', id: 'rhoTable', tex: '\\rho_{\\mathrm{t}}', unit: 'Ω m' },
  {
    kind: 'relation',
    id: 'off',
    tex: '\\delta',
    unit: '%',
    as: '100 * (rho - rhoTable) / rhoTable',
    digits: { decimals: 1 },
    slips: [{ id: 'measured value as the base', as: '100 * (rho - rhoTable) / rho' }],
  },
  {
    kind: 'verdict',
    id: 'agreement',
    choices: ['agrees', 'differs'],
    decide: ({ value, worst }) => (Math.abs(value('rho') - value('rhoTable')) <= worst('rho') ? 'agrees' : 'differs'),
  },
];

/** ρ from the corrected diameter d and a resistance over a length, or a resistance per length with nothing `below`; the slip is that of its unit. */
export function resistivityOf(above: string, below: readonly string[], unitSlip: Slip): Relation {
  return {
    kind: 'relation',
    id: 'rho',
    tex: '\\rho',
    unit: 'Ω m',
    as: fraction(`pi * d^2 * ${above}`, '4', ...below),
    si: true,
    digits: { figures: 3 },
    routes: [
      { id: 'radius first', via: [{ id: 'a', as: 'd / 2', digits: { figures: 3 } }], as: fraction(`pi * a^2 * ${above}`, ...below) },
      { id: 'area first', via: [{ id: 'A', as: 'pi * d^2 / 4', digits: { figures: 3 } }], as: fraction(`${above} * A`, ...below) },
      {
        id: 'radius, then area',
        via: [
          { id: 'a', as: 'd / 2', digits: { figures: 3 } },
          { id: 'A', as: 'pi * a^2', digits: { figures: 3 } },
        ],
        as: fraction(`${above} * A`, ...below),
      },
    ],
    slips: [
      { id: 'diameter used as radius', as: fraction(`pi * d^2 * ${above}`, ...below) },
      { id: 'diameter not squared', as: fraction(`pi * d * ${above}`, '4', ...below) },
      unitSlip,
      { id: 'diameter left in millimetres', as: fraction(`pi * (1000 * d)^2 * ${above}`, '4', ...below) },
    ],
  };
}

function fraction(above: string, ...below: readonly string[]): string {
  if (below.length === 0) return above;
  return below.length === 1 ? `${above} / ${below[0]}` : `${above} / (${below.join(' * ')})`;
}
