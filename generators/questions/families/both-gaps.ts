import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** Resistors p and q are put in series in the left and in the right gap. */
export const bothGaps: Family = {
  id: 'both-gaps',
  tags: ['metre-bridge', 'combinations'],
  body: {
    quantities: { P: ohms('P'), Q: ohms('Q'), p: ohms('p'), q: ohms('q'), l1: nullPoint('l_1'), l2: nullPoint('l_2'), W: bridgeWire },
    condition: ['P * (W - l1) = Q * l1', '(P + p) * (W - l2) = (Q + q) * l2'],
    asks: {
      null: {
        finds: ['l1', 'l2'],
        algebra: 2,
        steps: [
          { id: 'l1', as: 'W * P / (P + Q)', slips: { 'wrong end': 'W * Q / (P + Q)' } },
          { id: 'l2', as: 'W * (P + p) / (P + p + Q + q)', slips: { 'added to the other gap': 'W * (P + q) / (P + p + Q + q)' } },
        ],
      },
      both: {
        finds: ['P', 'Q'],
        algebra: 3,
        steps: [
          { id: 'Q', as: '(W - l1) * (p * (W - l2) - q * l2) / (W * (l2 - l1))' },
          { id: 'P', as: 'Q * l1 / (W - l1)', slips: { 'ratio inverted': 'Q * (W - l1) / l1' } },
        ],
      },
      left: {
        finds: ['Q', 'p'],
        algebra: 2,
        steps: [
          { id: 'Q', as: 'P * (W - l1) / l1', slips: { 'ratio inverted': 'P * l1 / (W - l1)' } },
          { id: 'p', as: '(Q + q) * l2 / (W - l2) - P', slips: { 'total taken for the added': '(Q + q) * l2 / (W - l2)' } },
        ],
      },
    },
  },
};
