import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms, shift } from '../kinds.ts';

/** The resistances change places, and the null point goes to the mirror place on the wire. */
export const interchange: Family = {
  id: 'interchange',
  tags: ['metre-bridge'],
  body: {
    quantities: { P: ohms('P'), Q: ohms('Q'), l1: nullPoint('l_1'), l2: nullPoint('l_2'), s: shift, T: { tex: 'T', unit: 'Ω', values: ['50', '80', '100', '200', '400', '500', '600', '1000'] }, W: bridgeWire },
    condition: ['P * (W - l1) = Q * l1', 'Q * (W - l2) = P * l2', 's = l2 - l1', 'P + Q = T', 'l1 + l2 = W'],
    asks: {
      shift: {
        finds: ['s'],
        algebra: 2,
        steps: [
          { id: 'l1', as: 'W * P / (P + Q)' },
          { id: 'l2', as: 'W * Q / (P + Q)' },
          { id: 's', as: 'l2 - l1', slips: { 'first null for the shift': 'l1', 'distance from the middle': 'l2 - W / 2' } },
        ],
      },
      null: {
        finds: ['Q', 'l2'],
        algebra: 1,
        steps: [
          { id: 'Q', as: 'P * (W - l1) / l1', slips: { 'ratio inverted': 'P * l1 / (W - l1)' } },
          { id: 'l2', as: 'W - l1', slips: { 'null unchanged': 'l1' } },
        ],
      },
      'null, left asked': {
        finds: ['P', 'l2'],
        algebra: 1,
        steps: [
          { id: 'P', as: 'Q * l1 / (W - l1)', slips: { 'ratio inverted': 'Q * (W - l1) / l1' } },
          { id: 'l2', as: 'W - l1', slips: { 'null unchanged': 'l1' } },
        ],
      },
      mirror: { finds: ['l2'], algebra: 1, steps: [{ id: 'l2', as: 'W - l1', slips: { 'null unchanged': 'l1' } }] },
      sum: {
        finds: ['P', 'Q'],
        algebra: 3,
        steps: [
          { id: 'l1', as: '(W - s) / 2', slips: { 'shift for the first null': 's' } },
          { id: 'P', as: 'T * l1 / W' },
          { id: 'Q', as: 'T - P' },
        ],
      },
      'nulls from the shift': { finds: ['l1', 'l2'], algebra: 2, steps: [{ id: 'l1', as: '(W - s) / 2', slips: { 'shift for the first null': 's' } }, { id: 'l2', as: 'W - l1' }] },
      'sum from the null': { finds: ['P', 'Q'], algebra: 2, steps: [{ id: 'P', as: 'T * l1 / W', slips: { 'other part taken': 'T * (W - l1) / W' } }, { id: 'Q', as: 'T - P' }] },
      right: {
        finds: ['Q'],
        algebra: 2,
        steps: [
          { id: 'l1', as: '(W - s) / 2', slips: { 'shift for the first null': 's' } },
          { id: 'l2', as: 'W - l1' },
          { id: 'Q', as: 'P * (W - l1) / l1', slips: { 'ratio inverted': 'P * l1 / (W - l1)' } },
        ],
      },
      left: {
        finds: ['P'],
        algebra: 2,
        steps: [
          { id: 'l1', as: '(W - s) / 2', slips: { 'shift for the first null': 's' } },
          { id: 'l2', as: 'W - l1' },
          { id: 'P', as: 'Q * l1 / (W - l1)', slips: { 'ratio inverted': 'Q * (W - l1) / l1' } },
        ],
      },
    },
  },
};
