import type { Family } from '../family.ts';
import { bridgeWire, gaps, nullPoint, partsAt } from '../kinds.ts';
import { DIAMETERS } from './materials.ts';

/** The whole practical: a wire in the gap of the choice, balanced and measured. */
export const resistivityBridge: Family = {
  id: 'resistivity-bridge',
  tags: ['metre-bridge', 'wires'],
  choices: gaps,
  body: (choice) => {
    const { own, other } = partsAt(choice, 'l');
    return {
      quantities: {
        R: { tex: 'R', unit: 'Ω', values: ['1.0', '2.0', '3.0', '4.0', '5.0', '6.0'] },
        l: { ...nullPoint('l'), values: { from: 35, to: 65, step: '0.5' } },
        X: { tex: 'X', unit: 'Ω', neat: 'any' },
        L: { tex: 'L', unit: 'cm', values: ['40.0', '50.0', '60.0', '75.0', '80.0', '100.0'] },
        d: { tex: 'd', unit: 'mm', values: DIAMETERS },
        rho: { tex: '\\rho', unit: 'Ω m', neat: 'any', printed: [1e-7, 2e-6] },
        W: bridgeWire,
      },
      condition: [`X * ${other} = R * ${own}`, '4 * rho * L * 10000 = X * pi * d^2'],
      asks: {
        resistivity: {
          finds: ['X', 'rho'],
          algebra: 2,
          steps: [
            { id: 'X', as: `R * ${own} / ${other}`, slips: { 'ratio inverted': `R * ${other} / ${own}` } },
            { id: 'rho', as: 'X * pi * d^2 / (4 * L)', si: true, slips: { 'diameter used as radius': 'X * pi * d^2 / L', 'diameter not squared': 'X * pi * d / (4 * L)', 'length left in centimetres': 'X * pi * d^2 / (400 * L)' } },
          ],
        },
      },
    };
  },
};
