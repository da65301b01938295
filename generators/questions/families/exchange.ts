import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** Cell and galvanometer change places: the balance stays. */
export const exchange: Family = {
  id: 'exchange',
  tags: ['metre-bridge', 'wheatstone'],
  body: {
    quantities: { P: ohms('P'), Q: ohms('Q'), l1: nullPoint('l_1'), l2: nullPoint('l_2'), W: bridgeWire },
    condition: ['P * (W - l1) = Q * l1', 'P * (W - l2) = Q * l2', 'l2 = l1'],
    asks: {
      null: { finds: ['Q', 'l2'], algebra: 1, steps: [{ id: 'Q', as: 'P * (W - l1) / l1', slips: { 'ratio inverted': 'P * l1 / (W - l1)' } }, { id: 'l2', as: 'l1', slips: { 'mirror place': 'W - l1' } }] },
      'null, left asked': { finds: ['P', 'l2'], algebra: 1, steps: [{ id: 'P', as: 'Q * l1 / (W - l1)', slips: { 'ratio inverted': 'Q * (W - l1) / l1' } }, { id: 'l2', as: 'l1', slips: { 'mirror place': 'W - l1' } }] },
      'from the gaps': { finds: ['l1', 'l2'], algebra: 1, steps: [{ id: 'l1', as: 'W * P / (P + Q)', slips: { 'wrong end': 'W * Q / (P + Q)' } }, { id: 'l2', as: 'l1', slips: { 'mirror place': 'W - l1' } }] },
    },
  },
};
