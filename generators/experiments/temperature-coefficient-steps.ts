import type { Step } from '../quantities/step.ts';
import { type KnownGap, balance, bridgeInfluences } from './bridge-steps.ts';

/**
 * X of a coil at several temperatures t; the line X = g · t + X₀, and from it the temperature coefficient referred to
 * 0 °C and to the temperature that the table's value refers to.
 */
export function temperatureSteps(known: KnownGap, reference: string): Step[] {
  return [
    ...bridgeInfluences,
    { kind: 'influence', id: 'thermometerError', tex: '\\tau', unit: '°C' },
    { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', on: 'box' },
    { kind: 'reading', id: 't', tex: 't', unit: '°C', per: 'bath', on: 'thermometer' },
    { kind: 'reading', id: 'l', tex: 'l', unit: 'cm', per: 'bath', on: 'scale' },
    { kind: 'relation', id: 'r', tex: '(100 - l)', unit: 'cm', per: 'bath', as: 'W - l', digits: { decimals: 1 } },
    { kind: 'relation', id: 'X', tex: 'X', unit: 'Ω', per: 'bath', digits: { figures: 3 }, ...balance(known, { R: 'R', l: 'l', r: 'r' }) },
    { kind: 'summary', id: 'g', tex: 'g', unit: 'Ω/°C', by: 'slope', of: ['t', 'X'], byEye: true, digits: { figures: 3 }, slips: [{ id: 'run over rise', as: 't / X' }] },
    { kind: 'summary', id: 'X0', tex: 'X_{0}', unit: 'Ω', by: 'intercept', of: ['t', 'X'], byEye: true, digits: { figures: 3 } },
    { kind: 'relation', id: 'alpha0', tex: '\\alpha_{0}', unit: '/°C', as: 'g / X0', model: 'g / (X0 - g * thermometerError)', digits: { figures: 3 } },
    { kind: 'given', id: 'tRef', tex: reference, unit: '°C' },
    {
      kind: 'relation',
      id: 'alphaRef',
      tex: `\\alpha_{${reference}}`,
      unit: '/°C',
      as: 'g / (X0 + tRef * g)',
      model: 'g / (X0 + (tRef - thermometerError) * g)',
      digits: { figures: 3 },
      slips: [{ id: 'wrong reference temperature', as: 'g / X0' }],
    },
    { kind: 'given', id: 'alphaTable', tex: '\\alpha_{\\mathrm{t}}', unit: '/°C' },
    {
      kind: 'relation',
      id: 'off',
      tex: '\\delta',
      unit: '%',
      as: '100 * (alphaRef - alphaTable) / alphaTable',
      digits: { decimals: 1 },
      slips: [{ id: 'measured value as the base', as: '100 * (alphaRef - alphaTable) / alphaRef' }],
    },
    {
      kind: 'verdict',
      id: 'agreement',
      choices: ['agrees', 'differs'],
      decide: ({ value, worst }) => (Math.abs(value('alphaRef') - value('alphaTable')) <= worst('alphaRef') ? 'agrees' : 'differs'),
    },
  ];
}
