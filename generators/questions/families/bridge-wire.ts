import type { Body, Family } from '../family.ts';
import { bridgeWire, nullPoint, pure } from '../kinds.ts';

/** The bridge wire is replaced by one of another length V, or of k times the resistance a length, which does not matter. */
export const bridgeWireChanged: Family = {
  id: 'bridge-wire',
  tags: ['metre-bridge', 'wires'],
  choices: { change: ['resistance', 'length'] },
  body: ({ change }): Body => (change === 'length' ? length : resistance),
};

const common = { l1: nullPoint('l_1'), W: bridgeWire };

const resistance: Body = {
  quantities: { ...common, k: pure('k', ['2', '3', '4', '0.5']), l2: nullPoint('l_2') },
  condition: ['k * l1 * (W - l2) = k * l2 * (W - l1)'],
  asks: {
    null: { finds: ['l2'], algebra: 1, idle: ['k'], steps: [{ id: 'l2', as: 'l1', slips: { 'null scaled with the resistance': 'W * k * l1 / (k * l1 + W - l1)' } }] },
  },
};

const length: Body = {
  quantities: {
    ...common,
    V: { tex: 'V', unit: 'cm', values: ['50', '80', '120', '150', '200'], neat: 0.5, printed: [30, 250] },
    l2: { ...nullPoint('l_2'), between: ['0', 'V'], printed: [5, 195] },
  },
  condition: ['l1 * (V - l2) = l2 * (W - l1)'],
  asks: {
    length: { finds: ['l2'], algebra: 1, steps: [{ id: 'l2', as: 'l1 * V / W', slips: { 'null unchanged': 'l1' } }] },
    wire: { finds: ['V'], algebra: 1, steps: [{ id: 'V', as: 'W * l2 / l1', slips: { 'ratio inverted': 'W * l1 / l2' } }] },
  },
};
