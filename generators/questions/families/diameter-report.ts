import { round } from '../../quantities/written.ts';
import type { Body, Family } from '../family.ts';

/** Mean and standard deviation of repeated readings of a diameter, with n or n − 1 in the divisor. */
export const diameterReport: Family = {
  id: 'diameter-report',
  tags: ['errors', 'instruments'],
  choices: { sd: ['sample', 'population'] },
  body: ({ sd }): Body => ({
    quantities: {
      d: { tex: 'd', unit: 'mm', per: 'rows', neat: 'any' },
      n: { tex: 'n', unit: '', fixed: '4', count: 'rows', between: ['1', undefined] },
      mean: { tex: '\\overline{d}', unit: 'mm', neat: 'any' },
      off: { tex: '\\delta', unit: 'mm', per: 'rows', between: [undefined, undefined], digits: { decimals: 4 } },
      square: { tex: 'q', unit: 'mm²', per: 'rows', mayBeLeast: true },
      msd: { tex: 'v', unit: 'mm²', mayBeLeast: true, neat: 'any', digits: { figures: 4 } },
      s: { tex: 's', unit: 'mm', mayBeLeast: true, neat: 'any', digits: { figures: 2 } },
    },
    condition: ['off = d - mean', 'square = off^2', sd === 'population' ? 's^2 = msd' : 's^2 * (n - 1) = n * msd'],
    draw: (random) => {
      const centre = random.integer(35, 75);
      const readings = Array.from({ length: 4 }, () => centre + random.integer(-3, 3));
      return { d: readings.map((hundredths) => round(hundredths / 100, { decimals: 2 }, 'even')) };
    },
    asks: {
      report: {
        finds: ['mean', 's'],
        algebra: 1,
        steps: [
          { id: 'mean', mean: 'd' },
          { id: 'off', as: 'd - mean' },
          { id: 'square', as: 'off^2' },
          { id: 'msd', mean: 'square' },
          sd === 'population'
            ? { id: 's', as: 'sqrt(msd)', slips: { 'root not taken of the square': 'msd' } }
            : { id: 's', as: 'sqrt(msd * n / (n - 1))', slips: { 'n in the divisor': 'sqrt(msd)', 'root not taken of the square': 'msd' } },
        ],
      },
    },
  }),
};
