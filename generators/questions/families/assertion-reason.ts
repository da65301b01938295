import type { Family } from '../family.ts';

/** How an assertion and a reason may stand to each other; the order is the usual one and does not change. */
const VERDICTS = ['explains', 'both true', 'assertion alone', 'reason alone'] as const;

/** Topics of the statements in content, by how the two stand to each other. */
const TOPICS = {
  explains: ['ends', 'exchange', 'strips', 'middle', 'careful', 'four times', 'end resistances', 'jockey', 'no scale'],
  'both true': ['cell', 'constantan', 'screw', 'plugs', 'no current', 'copper coil', 'thicker wire', 'both ways', 'kelvin'],
  'assertion alone': ['thick', 'shunt', 'protective', 'two cells', 'half a wire', 'small', 'alloy', 'positive zero', 'same potential'],
  'reason alone': ['heating', 'stretched', 'one per cent', 'always stays', 'calibrated', 'known cell', 'in series', 'plug', 'megohms'],
} as const satisfies Readonly<Record<(typeof VERDICTS)[number], readonly string[]>>;

/** How the two of each topic stand. */
const STANDING = new Map(VERDICTS.flatMap((verdict) => TOPICS[verdict].map((topic): [string, string] => [topic, verdict])));

/** Assertion and reason, to be judged each and together. */
export const assertionReason: Family = {
  id: 'assertion-reason',
  tags: ['practical', 'metre-bridge'],
  choices: { topic: [...STANDING.keys()] },
  body: ({ topic }) => ({
    quantities: {},
    condition: [],
    asks: { judgement: { finds: ['judgement'], algebra: 1, steps: [{ id: 'judgement', decide: { choices: VERDICTS, by: () => STANDING.get(topic!)!, inOrder: true } }] } },
  }),
};
