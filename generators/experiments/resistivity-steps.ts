import type { Step } from '../quantities/step.ts';

/** Resistivity from the mean X, the corrected diameter and the length between the terminals, and how far it lies from the table. */
export function resistivitySteps(): Step[] {
  return [
    { kind: 'reading', id: 'L', tex: 'L', unit: 'cm', on: 'rule' },
    {
      kind: 'relation',
      id: 'rho',
      tex: '\\rho',
      unit: 'Ω m',
      as: 'pi * d^2 * meanX / (4 * L)',
      si: true,
      digits: { figures: 3 },
      routes: [
        { id: 'radius first', via: [{ id: 'a', as: 'd / 2', digits: { figures: 3 } }], as: 'pi * a^2 * meanX / L' },
        { id: 'area first', via: [{ id: 'A', as: 'pi * d^2 / 4', digits: { figures: 3 } }], as: 'meanX * A / L' },
        {
          id: 'radius, then area',
          via: [
            { id: 'a', as: 'd / 2', digits: { figures: 3 } },
            { id: 'A', as: 'pi * a^2', digits: { figures: 3 } },
          ],
          as: 'meanX * A / L',
        },
      ],
      slips: [
        { id: 'diameter used as radius', as: 'pi * d^2 * meanX / L' },
        { id: 'diameter not squared', as: 'pi * d * meanX / (4 * L)' },
        { id: 'length left in centimetres', as: 'pi * d^2 * meanX / (4 * 100 * L)' },
        { id: 'diameter left in millimetres', as: 'pi * (1000 * d)^2 * meanX / (4 * L)' },
      ],
    },
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
}
