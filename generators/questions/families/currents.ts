import type { Body, Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

const EMFS = ['1.5', '2.0', '3.0', '4.0', '5.0', '6.0'] as const;

/** Currents in the gaps, in the wire and from the cell, at balance, when the galvanometer branch carries none. */
export const currents: Family = {
  id: 'currents',
  tags: ['metre-bridge', 'currents'],
  choices: { cell: ['ideal', 'real'] },
  body: ({ cell }): Body => {
    const real = cell === 'real';
    const total = { id: 'I', as: real ? 'E / (N + r)' : 'E / N', slips: { 'branches in series': 'E / (P + Q + sigma * W)', ...(real && { 'inner resistance left out': 'E / N' }) } };
    const wire = { id: 'N', as: '(P + Q) * sigma * W / (P + Q + sigma * W)' };
    return {
      quantities: {
        P: ohms('P'),
        Q: ohms('Q'),
        l: nullPoint('l'),
        sigma: { tex: '\\sigma', unit: 'Ω/cm', values: ['0.020', '0.040', '0.050', '0.080', '0.10', '0.15', '0.20'] },
        E: { tex: 'E', unit: 'V', values: EMFS },
        ...(real && { r: ohms('r', ['0.50', '1.0', '1.2', '1.5', '2.0']) }),
        N: { tex: 'R', unit: 'Ω' },
        I: { tex: 'I', unit: 'A' },
        I1: { tex: 'I_1', unit: 'A' },
        I2: { tex: 'I_2', unit: 'A' },
        W: bridgeWire,
      },
      condition: ['P * (W - l) = Q * l', 'N * (P + Q + sigma * W) = (P + Q) * sigma * W', real ? 'E = I * (N + r)' : 'E = I * N', 'I1 * (P + Q) = I * N', 'I2 * sigma * W = I * N'],
      asks: {
        left: { finds: ['P', 'I'], algebra: 1, steps: [{ id: 'P', as: 'Q * l / (W - l)', slips: { 'ratio inverted': 'Q * (W - l) / l' } }, wire, total] },
        right: { finds: ['Q', 'I'], algebra: 1, steps: [{ id: 'Q', as: 'P * (W - l) / l', slips: { 'ratio inverted': 'P * l / (W - l)' } }, wire, total] },
        branches: {
          finds: ['I1', 'I2'],
          algebra: 1,
          steps: [
            wire,
            { id: 'I', as: real ? 'E / (N + r)' : 'E / N', ...(real && { slips: { 'inner resistance left out': 'E / N' } }) },
            { id: 'I1', as: 'I * N / (P + Q)', slips: { 'whole current in the gaps': 'I' } },
            { id: 'I2', as: 'I * N / (sigma * W)' },
          ],
        },
      },
    };
  },
};
