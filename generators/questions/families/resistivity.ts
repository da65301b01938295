import type { Body, Family } from '../family.ts';
import { DIAMETERS, RESISTIVITIES } from './materials.ts';

/** Resistance, length, thickness and resistivity of a wire: any from the others. The diameter is told, or the cross-section. */
export const resistivity: Family = {
  id: 'resistivity',
  tags: ['wires'],
  choices: { section: ['diameter', 'area'] },
  body: ({ section }) => (section === 'diameter' ? round : flat),
};

const common: Body['quantities'] = {
  X: { tex: 'X', unit: 'Ω', values: ['1.50', '2.00', '2.50', '3.20', '4.00', '5.00', '6.40', '8.00'], neat: 'any', printed: [0.01, 50] },
  L: { tex: 'L', unit: 'm', values: ['0.400', '0.500', '0.600', '0.750', '0.800', '1.000', '1.200'], neat: 'any', printed: [0.05, 20] },
  rho: { tex: '\\rho', unit: 'Ω m', values: RESISTIVITIES, neat: 'any', printed: [1e-8, 2e-6] },
};

const round: Body = {
  quantities: { ...common, d: { tex: 'd', unit: 'mm', values: DIAMETERS, neat: 'any', printed: [0.1, 2] } },
  condition: ['4 * rho * L * 1000000 = X * pi * d^2'],
  asks: {
    resistivity: { finds: ['rho'], algebra: 2, steps: [{ id: 'rho', as: 'X * pi * d^2 / (4 * L)', si: true, slips: { 'diameter used as radius': 'X * pi * d^2 / L', 'diameter not squared': 'X * pi * d / (4 * L)', 'length multiplied': 'X * pi * d^2 * L / 4' } }] },
    resistance: { finds: ['X'], algebra: 1, steps: [{ id: 'X', as: '4 * rho * L / (pi * d^2)', si: true, slips: { 'diameter used as radius': 'rho * L / (pi * d^2)', 'diameter not squared': '4 * rho * L / (pi * d)' } }] },
    length: { finds: ['L'], algebra: 2, steps: [{ id: 'L', as: 'X * pi * d^2 / (4 * rho)', si: true, slips: { 'diameter used as radius': 'X * pi * d^2 / rho', 'diameter not squared': 'X * pi * d / (4 * rho)' } }] },
    diameter: { finds: ['d'], algebra: 2, steps: [{ id: 'd', as: 'sqrt(4 * rho * L / (pi * X))', si: true, slips: { 'radius given for the diameter': 'sqrt(rho * L / (pi * X))' } }] },
  },
};

const flat: Body = {
  quantities: { ...common, A: { tex: 'A', unit: 'mm²', values: ['0.10', '0.12', '0.15', '0.20', '0.25', '0.30', '0.40', '0.50'], neat: 'any', printed: [0.01, 5] } },
  condition: ['rho * L * 1000000 = X * A'],
  asks: {
    resistivity: { finds: ['rho'], algebra: 2, steps: [{ id: 'rho', as: 'X * A / L', si: true, slips: { 'length multiplied': 'X * A * L' } }] },
    resistance: { finds: ['X'], algebra: 1, steps: [{ id: 'X', as: 'rho * L / A', si: true, slips: { 'square millimetres taken as thousandths': 'rho * L / (1000 * A)' } }] },
    length: { finds: ['L'], algebra: 2, steps: [{ id: 'L', as: 'X * A / rho', si: true, slips: { 'square millimetres taken as thousandths': '1000 * X * A / rho' } }] },
    'cross-section': { finds: ['A'], algebra: 2, steps: [{ id: 'A', as: 'rho * L / X', si: true, slips: { 'resistance multiplied': 'rho * L * X' } }] },
  },
};
