import type { Family } from '../family.ts';

/** Topics of short oral questions; question and answers are content. */
const TOPICS = [
  'middle', 'near-end', 'cell', 'two-cells', 'exchange', 'interchange', 'sensitive', 'no-change', 'null-method', 'no-current', 'same-potential',
  'wheatstone', 'uniform', 'thicker-wire', 'strips', 'wire-material', 'end-corrections', 'jockey', 'parallax', 'key', 'temperature', 'protective',
  'protective-out', 'low-resistance', 'high-resistance', 'one-side', 'none', 'shunted', 'lengthened', 'carey-foster', 'ends-drop-out', 'kelvin',
  'drawn-out', 'halved', 'diameter', 'two-directions', 'least-count', 'zero-error', 'ratchet', 'backlash', 'plugs', 'plug-out', 'warmer',
  'thermometer',
] as const;

/** The right answer, and three that a student may think right. */
const answersTo = (topic: string) => [topic, `${topic} a`, `${topic} b`, `${topic} c`];

/** Viva-style questions with a short answer in words. */
export const viva: Family = {
  id: 'viva',
  tags: ['practical'],
  choices: { topic: TOPICS },
  body: ({ topic }) => ({
    quantities: {},
    condition: [],
    asks: { answer: { finds: ['answer'], algebra: 1, steps: [{ id: 'answer', decide: { choices: answersTo(topic!), by: () => topic! } }] } },
  }),
};
