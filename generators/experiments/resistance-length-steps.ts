import type { Step } from '../quantities/step.ts';
import { type KnownGap, balance, bridgeInfluences } from './bridge-steps.ts';
import { againstTable, resistivityOf } from './resistivity-steps.ts';
import { type ZeroError, screwGaugeSteps } from './screw-gauge-steps.ts';

/** X for several lengths L of one wire; the line X = g · L + b, whose slope gives the resistivity and whose intercept the leads. */
export function resistanceLengthSteps(known: KnownGap, zero: ZeroError): Step[] {
  const line = { kind: 'summary', of: ['L', 'X'], byEye: true, digits: { figures: 3 } } as const;
  return [
    ...bridgeInfluences,
    { kind: 'reading', id: 'L', tex: 'L', unit: 'cm', per: 'lengths', on: 'rule' },
    { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'lengths', on: 'box' },
    { kind: 'reading', id: 'l', tex: 'l', unit: 'cm', per: 'lengths', on: 'scale' },
    { kind: 'relation', id: 'r', tex: '(100 - l)', unit: 'cm', per: 'lengths', as: 'W - l', digits: { decimals: 1 } },
    { kind: 'relation', id: 'X', tex: 'X', unit: 'Ω', per: 'lengths', digits: { figures: 3 }, ...balance(known, { R: 'R', l: 'l', r: 'r' }) },
    { ...line, id: 'g', tex: 'g', unit: 'Ω/cm', by: 'slope', of: [...line.of], slips: [{ id: 'run over rise', as: 'L / X' }] },
    { ...line, id: 'b', tex: 'b', unit: 'Ω', by: 'intercept', of: [...line.of], digits: { decimals: 2 } },
    ...screwGaugeSteps(zero),
    resistivityOf('g', [], { id: 'slope left in ohms per centimetre', as: 'pi * d^2 * g / (4 * 100)' }),
    ...againstTable,
    {
      kind: 'verdict',
      id: 'intercept',
      choices: ['leads', 'nothing', 'negative'],
      decide({ value, expanded }) {
        if (Math.abs(value('b')) <= expanded('b')) return 'nothing';
        return value('b') > 0 ? 'leads' : 'negative';
      },
    },
  ];
}
