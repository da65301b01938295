import type { Known } from '../../generators/order/known.ts';

/** A short table of wires, enough to read and to mistype. */
export const known: Known = {
  materials: ['constantan', 'manganin', 'nichrome', 'german silver'],
  gauges: { SWG: [22, 24, 26, 28, 30, 32, 34], AWG: [20, 24, 28, 30] },
  experiments: ['resistivity', 'combination'],
  sources: ['openstax-college', 'ncert'],
  languages: ['en'],
};
