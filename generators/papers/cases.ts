import { familyNamed } from '../questions/index.ts';
import type { Choice } from '../questions/family.ts';
import { type Entry, entriesOf } from './entry.ts';
import type { PartForm } from './forms.ts';

type CasePart = readonly [family: string, ask: string, form: PartForm, choice?: Choice];

/** Short cases by the name of their story in content; the hardest part gives the level, the first the topic. */
const CASES: Readonly<Record<string, readonly CasePart[]>> = {
  notebooks: [['balance', 'right', 'numeric'], ['shunt', 'resistor for a null', 'numeric'], ['viva', 'answer', 'choice', { topic: 'one-side' }]],
  'coil without a label': [['resistivity', 'resistivity', 'numeric'], ['screw-gauge', 'known', 'figure'], ['viva', 'answer', 'choice', { topic: 'diameter' }]],
  'warm laboratory': [['temperature', 'null', 'numeric'], ['bridge-wire', 'null', 'numeric'], ['viva', 'answer', 'choice', { topic: 'temperature' }]],
};

/** All cases, ready to be put into a paper. */
export function cases(): Entry[] {
  return Object.entries(CASES).map(([story, list]) => {
    const parts = list.map(([family, ask, form, choice = {}]) => partOf(family, ask, form, choice));
    return {
      question: `case ${story}`,
      form: 'case' as const,
      topic: parts[0]!.topic,
      level: parts.map(({ level }) => level).sort().at(-1)!,
      marks: parts.reduce((sum, { marks }) => sum + marks, 0),
      parts: parts.flatMap((one) => one.parts),
      story,
    };
  });
}

function partOf(family: string, ask: string, form: PartForm, choice: Choice): Entry {
  const found = entriesOf(familyNamed(family), form, choice).find(({ parts }) => parts[0]!.ask === ask);
  if (!found) throw new Error(`${family} has no direction ${ask} for the form ${form}`);
  return found;
}
