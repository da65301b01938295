import type { Family } from '../family.ts';
import { RESISTIVITIES } from './materials.ts';

/** Standard wire gauges 20 to 36, in mm (BS 3737). */
const GAUGES: Readonly<Record<string, number>> = { '20': 0.914, '22': 0.711, '24': 0.559, '26': 0.457, '28': 0.376, '30': 0.315, '32': 0.274, '34': 0.234, '36': 0.193 };

/** The gauge of a wire that is to have a resistance at a length: the nearest diameter of the even gauges. */
export const gauge: Family = {
  id: 'gauge',
  tags: ['wires', 'practical'],
  body: {
    quantities: {
      rho: { tex: '\\rho', unit: 'Ω m', values: RESISTIVITIES },
      X: { tex: 'X', unit: 'Ω', values: ['1.0', '1.5', '2.0', '3.0', '4.0', '5.0', '6.0'] },
      L: { tex: 'L', unit: 'm', values: ['0.50', '0.75', '0.80', '1.00', '1.20'] },
      d: { tex: 'd', unit: 'mm', neat: 'any', printed: [0.2, 0.9] },
    },
    condition: ['4 * rho * L * 1000000 = X * pi * d^2'],
    holds: { 'a gauge of the table is near': '(d - 0.18) * (1 - d)' },
    asks: {
      gauge: {
        finds: ['d', 'gauge'],
        algebra: 2,
        steps: [
          { id: 'd', as: 'sqrt(4 * rho * L / (pi * X))', si: true, slips: { 'radius given for the diameter': 'sqrt(rho * L / (pi * X))' } },
          { id: 'gauge', decide: { choices: Object.keys(GAUGES), by: ({ value }) => nearest(value('d')) } },
        ],
      },
    },
  },
};

function nearest(d: number): string {
  const [first] = Object.entries(GAUGES).sort(([, a], [, b]) => Math.abs(a - d) - Math.abs(b - d));
  return first![0];
}
