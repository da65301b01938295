import type { Family, Work } from '../family.ts';
import { bridgeWire, nullPoint } from '../kinds.ts';
import { COEFFICIENTS } from './temperature.ts';

const coefficient = (tex: string, values: readonly string[]) => ({ tex, unit: '/°C', values, between: [undefined, undefined] as const, printed: [0.00001, 0.006] as const, neat: 'any' as const });

/** By how much the ratio of the gaps has changed. */
const factor: Work = { id: 'k', as: 'l2 * (W - l1) / (l1 * (W - l2))', slips: { 'lengths compared alone': 'l2 / l1' } };

/** Coils of two materials in the two gaps, heated together from 0 °C to t. */
export const temperatures: Family = {
  id: 'temperatures',
  tags: ['metre-bridge', 'temperature'],
  body: {
    quantities: {
      alpha1: coefficient('\\alpha_1', COEFFICIENTS),
      alpha2: coefficient('\\alpha_2', [...COEFFICIENTS, '0.0004', '0.00002']),
      t: { tex: 't', unit: '°C', values: ['50', '80', '100', '120', '150', '200'], between: ['-273.15', undefined], neat: 5, printed: [0, 400] },
      k: { tex: 'k', unit: '' },
      l1: nullPoint('l_1'),
      l2: { ...nullPoint('l_2'), neat: 'any', digits: { decimals: 1 } },
      W: bridgeWire,
    },
    condition: ['(1 + alpha1 * t) * l1 * (W - l2) = (1 + alpha2 * t) * l2 * (W - l1)'],
    holds: { 'the two materials differ': '(alpha1 - alpha2)^2' },
    asks: {
      null: {
        finds: ['l2'],
        algebra: 2,
        steps: [
          { id: 'k', as: '(1 + alpha1 * t) / (1 + alpha2 * t)', slips: { 'right coil taken as cold': '1 + alpha1 * t', 'left coil taken as cold': '1 / (1 + alpha2 * t)' } },
          { id: 'l2', as: 'W * k * l1 / (k * l1 + W - l1)', slips: { 'null scaled with the resistance': 'k * l1' } },
        ],
      },
      coefficient: {
        finds: ['alpha1'],
        algebra: 2,
        steps: [
          factor,
          { id: 'alpha1', as: '(k * (1 + alpha2 * t) - 1) / t', slips: { 'right coil taken as cold': '(k - 1) / t' } },
        ],
      },
      'coefficient on the right': { finds: ['alpha2'], algebra: 3, steps: [factor, { id: 'alpha2', as: '((1 + alpha1 * t) / k - 1) / t', slips: { 'left coil taken as cold': '(1 / k - 1) / t' } }] },
    },
  },
};
