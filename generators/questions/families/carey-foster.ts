import type { Family } from '../family.ts';
import { bridgeWire, nullPoint } from '../kinds.ts';

const ohms = (tex: string, values: readonly string[]) => ({ tex, unit: 'Ω', values });

/**
 * Carey Foster's bridge: X in the left outer gap gives l1, X and Y interchanged give l2; the ends of the wire cancel
 * (Glazebrook and Shaw, Practical Physics).
 */
export const careyFoster: Family = {
  id: 'carey-foster',
  tags: ['metre-bridge', 'wheatstone'],
  body: {
    quantities: {
      X: ohms('X', ['1.0', '1.5', '2.0', '3.0', '4.0', '5.0']),
      Y: ohms('Y', ['1.0', '1.1', '1.6', '2.2', '3.1', '4.3', '5.2']),
      sigma: { tex: '\\sigma', unit: 'Ω/cm', values: ['0.020', '0.025', '0.030', '0.040', '0.050'], printed: [0.01, 0.1] },
      l1: nullPoint('l_1'),
      l2: nullPoint('l_2'),
      W: bridgeWire,
    },
    condition: ['Y - X = sigma * (l1 - l2)'],
    holds: { 'the difference is less than the wire': '(sigma * W)^2 - (Y - X)^2', 'the two null points differ': '(l1 - l2)^2' },
    asks: {
      unknown: { finds: ['Y'], algebra: 2, steps: [{ id: 'Y', as: 'X + sigma * (l1 - l2)', slips: { 'difference of the wrong sign': 'X - sigma * (l1 - l2)', 'first null alone': 'X + sigma * l1' } }] },
      'unknown on the left': { finds: ['X'], algebra: 2, steps: [{ id: 'X', as: 'Y - sigma * (l1 - l2)', slips: { 'difference of the wrong sign': 'Y + sigma * (l1 - l2)', 'first null alone': 'Y + sigma * l1' } }] },
      null: { finds: ['l2'], algebra: 2, steps: [{ id: 'l2', as: 'l1 - (Y - X) / sigma', slips: { 'difference of the wrong sign': 'l1 + (Y - X) / sigma' } }] },
      wire: { finds: ['sigma'], algebra: 2, steps: [{ id: 'sigma', as: '(Y - X) / (l1 - l2)', slips: { 'over the whole wire': 'sqrt((Y - X)^2) / W' } }] },
    },
  },
};
