import type { Body, Family } from '../family.ts';

const any = (tex: string, unit: string, values: readonly string[]) => ({ tex, unit, values, neat: 'any' as const });
const error = (tex: string, unit: string, values: readonly string[]) => ({ ...any(`\\Delta ${tex}`, unit, values), mayBeLeast: true as const });
const result = { tex: 'p', unit: '%', neat: 'any' as const, accepted: { figures: 2 } };
const wire = {
  L: any('L', 'cm', ['40.0', '50.0', '60.0', '80.0']),
  dL: error('L', 'cm', ['0.1', '0.2']),
  d: any('d', 'mm', ['0.38', '0.46', '0.50', '0.56', '0.71']),
  dd: error('d', 'mm', ['0.01', '0.02']),
};

/** The maximum permissible error of a resistivity, from X on the bridge or from a voltmeter and an ammeter. */
export const errorOfResistivity: Family = {
  id: 'error-of-resistivity',
  tags: ['errors', 'wires'],
  choices: { by: ['bridge', 'meters'] },
  body: ({ by }) => (by === 'meters' ? meters : bridge),
};

const bridge: Body = {
  quantities: { X: any('X', 'Ω', ['2.50', '3.20', '4.00', '5.60']), dX: error('X', 'Ω', ['0.02', '0.03', '0.05']), ...wire, p: result },
  condition: ['p / 100 * X * d * L = dX * d * L + 2 * dd * X * L + dL * X * d'],
  asks: {
    bridge: { finds: ['p'], algebra: 2, steps: [{ id: 'p', as: '100 * (dX / X + 2 * dd / d + dL / L)', slips: { 'diameter counted once': '100 * (dX / X + dd / d + dL / L)', 'length subtracted': '100 * (dX / X + 2 * dd / d - dL / L)', 'diameter left out': '100 * (dX / X + dL / L)' } }] },
  },
};

const meters: Body = {
  quantities: {
    V: any('V', 'V', ['2.0', '3.0', '5.0']),
    dV: error('V', 'V', ['0.05', '0.1']),
    I: any('I', 'A', ['0.50', '1.00', '2.00']),
    dI: error('I', 'A', ['0.01', '0.02']),
    ...wire,
    p: result,
  },
  condition: ['p / 100 * V * I * d * L = dV * I * d * L + dI * V * d * L + 2 * dd * V * I * L + dL * V * I * d'],
  asks: {
    meters: { finds: ['p'], algebra: 2, steps: [{ id: 'p', as: '100 * (dV / V + dI / I + 2 * dd / d + dL / L)', slips: { 'diameter counted once': '100 * (dV / V + dI / I + dd / d + dL / L)', 'current subtracted': '100 * (dV / V - dI / I + 2 * dd / d + dL / L)' } }] },
  },
};
