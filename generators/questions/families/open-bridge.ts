import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** Potential difference between middle strip and jockey away from the null, seen by a voltmeter that takes no current. */
export const openBridge: Family = {
  id: 'open-bridge',
  tags: ['metre-bridge', 'currents'],
  body: {
    quantities: {
      P: ohms('P'),
      Q: ohms('Q'),
      l: nullPoint('l'),
      E: { tex: 'E', unit: 'V', values: ['1.5', '2.0', '3.0', '4.0', '5.0', '6.0', '10'] },
      B: { tex: 'V_1', unit: 'V' },
      J: { tex: 'V_2', unit: 'V' },
      V: { tex: 'V', unit: 'V', values: ['0.10', '0.20', '0.25', '0.30', '0.40', '0.50'], between: [undefined, undefined], eitherWay: true },
      W: bridgeWire,
    },
    condition: ['V * (P + Q) * W = E * (Q * l - P * (W - l))'],
    holds: { 'the bridge is off balance': 'V^2' },
    asks: {
      voltage: {
        finds: ['V'],
        algebra: 2,
        steps: [
          { id: 'B', as: 'E * Q / (P + Q)', slips: { 'fall taken for the potential': 'E * P / (P + Q)' } },
          { id: 'J', as: 'E * (W - l) / W' },
          { id: 'V', as: 'B - J', slips: { 'second potential alone': 'J' } },
        ],
      },
      place: {
        finds: ['l'],
        algebra: 2,
        steps: [
          { id: 'B', as: 'E * Q / (P + Q)' },
          { id: 'J', as: 'B - V', slips: { 'wrong sense': 'B + V' } },
          { id: 'l', as: 'W * (E - J) / E', slips: { 'wrong end': 'W * J / E' } },
        ],
      },
    },
  },
};
