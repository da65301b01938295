import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** The wire's resistance a length from a known resistance against a copper strip, which has none: X left gives l1, interchanged l2. */
export const careyFosterWire: Family = {
  id: 'carey-foster-wire',
  tags: ['metre-bridge', 'wheatstone'],
  body: {
    quantities: {
      X: ohms('X', ['0.50', '0.80', '1.0', '1.2', '1.5', '2.0']),
      l1: { ...nullPoint('l_1'), values: { from: 10, to: 45, step: '0.5' } },
      l2: { ...nullPoint('l_2'), values: { from: 50, to: 90, step: '0.5' } },
      sigma: { tex: '\\sigma', unit: 'Ω/cm' },
      T: { tex: 'R_w', unit: 'Ω' },
      W: bridgeWire,
    },
    condition: ['X = sigma * (l2 - l1)', 'T = sigma * W'],
    holds: { 'the null point moves to the right': 'l2 - l1' },
    asks: {
      wire: { finds: ['sigma', 'T'], algebra: 2, steps: [{ id: 'sigma', as: 'X / (l2 - l1)', slips: { 'second null alone': 'X / l2', 'over the whole wire': 'X / W' } }, { id: 'T', as: 'sigma * W' }] },
    },
  },
};
