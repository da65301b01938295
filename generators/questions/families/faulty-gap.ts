import type { Family } from '../family.ts';
import { ohms } from '../kinds.ts';

const ENDS = ['left end', 'right end'] as const;

/** A gap is open or shorted: no null on the wire, the deflection is to one side and least at one end. */
export const faultyGap: Family = {
  id: 'faulty-gap',
  tags: ['metre-bridge', 'practical'],
  choices: { gap: ['left', 'right'], fault: ['open', 'shorted'] },
  body: ({ gap, fault }) => ({
    quantities: { R: ohms('R') },
    condition: [],
    asks: {
      end: { finds: ['end'], algebra: 1, idle: ['R'], steps: [{ id: 'end', decide: { choices: ENDS, by: () => ((gap === 'left') === (fault === 'shorted') ? 'left end' : 'right end') } }] },
    },
  }),
};
