import type { Family } from '../family.ts';

/** Topics of short oral questions; question and answer are content. */
const TOPICS = ['middle', 'cell', 'interchange', 'sensitive', 'strips', 'wire-material', 'jockey', 'key', 'protective', 'low-resistance', 'high-resistance', 'one-side', 'none', 'diameter', 'temperature', 'wheatstone'] as const;

/** Viva-style questions with a short answer in words. */
export const viva: Family = {
  id: 'viva',
  tags: ['practical'],
  choices: { topic: TOPICS },
  body: ({ topic }) => ({
    quantities: {},
    condition: [],
    asks: { answer: { finds: ['answer'], algebra: 1, steps: [{ id: 'answer', decide: { choices: TOPICS, by: () => topic! } }] } },
  }),
};
