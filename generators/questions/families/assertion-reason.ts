import type { Family } from '../family.ts';

/** How an assertion and a reason may stand to each other; the order is the usual one and does not change. */
const VERDICTS = ['explains', 'both true', 'assertion alone', 'reason alone'] as const;

/** Statements in content, by topic, and how they stand. */
const TOPICS: Readonly<Record<string, (typeof VERDICTS)[number]>> = {
  ends: 'explains',
  cell: 'both true',
  exchange: 'explains',
  strips: 'explains',
  thick: 'assertion alone',
  heating: 'reason alone',
  middle: 'explains',
  shunt: 'assertion alone',
  stretched: 'reason alone',
  constantan: 'both true',
};

/** Assertion and reason, to be judged each and together. */
export const assertionReason: Family = {
  id: 'assertion-reason',
  tags: ['practical', 'metre-bridge'],
  choices: { topic: Object.keys(TOPICS) },
  body: ({ topic }) => ({
    quantities: {},
    condition: [],
    asks: { judgement: { finds: ['judgement'], algebra: 1, steps: [{ id: 'judgement', decide: { choices: VERDICTS, by: () => TOPICS[topic!]!, inOrder: true } }] } },
  }),
};
