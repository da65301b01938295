import type { Family } from '../family.ts';
import { DIAMETERS, RESISTIVITIES } from './materials.ts';

/** Resistance, length, diameter and resistivity of a wire: any from the others. */
export const resistivity: Family = {
  id: 'resistivity',
  tags: ['wires'],
  body: {
    quantities: {
      X: { tex: 'X', unit: 'Ω', values: ['1.50', '2.00', '2.50', '3.20', '4.00', '5.00', '6.40', '8.00'], neat: 'any', printed: [0.01, 50] },
      L: { tex: 'L', unit: 'm', values: ['0.400', '0.500', '0.600', '0.750', '0.800', '1.000', '1.200'], neat: 'any', printed: [0.05, 20] },
      d: { tex: 'd', unit: 'mm', values: DIAMETERS, neat: 'any', printed: [0.1, 2] },
      rho: { tex: '\\rho', unit: 'Ω m', values: RESISTIVITIES, neat: 'any' },
    },
    condition: ['4 * rho * L * 1000000 = X * pi * d^2'],
    asks: {
      resistivity: { finds: ['rho'], algebra: 2, steps: [{ id: 'rho', as: 'X * pi * d^2 / (4 * L)', si: true, slips: { 'diameter used as radius': 'X * pi * d^2 / L', 'diameter not squared': 'X * pi * d / (4 * L)', 'length multiplied': 'X * pi * d^2 * L / 4' } }] },
      resistance: { finds: ['X'], algebra: 1, steps: [{ id: 'X', as: '4 * rho * L / (pi * d^2)', si: true, slips: { 'diameter used as radius': 'rho * L / (pi * d^2)', 'diameter not squared': '4 * rho * L / (pi * d)' } }] },
      length: { finds: ['L'], algebra: 2, steps: [{ id: 'L', as: 'X * pi * d^2 / (4 * rho)', si: true, slips: { 'diameter used as radius': 'X * pi * d^2 / rho', 'diameter not squared': 'X * pi * d / (4 * rho)' } }] },
      diameter: { finds: ['d'], algebra: 2, steps: [{ id: 'd', as: 'sqrt(4 * rho * L / (pi * X))', si: true, slips: { 'radius given for the diameter': 'sqrt(rho * L / (pi * X))' } }] },
    },
  },
};
