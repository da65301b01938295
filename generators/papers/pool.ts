import { directions } from '../questions/direction.ts';
import { families } from '../questions/index.ts';
import type { Choice, Family } from '../questions/family.ts';
import { cases } from './cases.ts';
import { type Entry, type Part, entriesOf, hasSeveral } from './entry.ts';
import { PART_FORMS } from './forms.ts';

/** The standard deviation that a paper is set with. */
export type Deviation = 'sample' | 'population';

/** What a setter's choice for the whole paper says of a family. */
export const chosenFor = (family: Family, sd: Deviation): Choice => (family.choices?.['sd'] ? { sd } : {});

/** Statements and oral questions are many under one family; a paper has so many of them at most. */
const MOST_OF_A_KIND = 6;

const made = new Map<Deviation, Entry[]>();

/** All that questions can be chosen from. */
export function pool(sd: Deviation): readonly Entry[] {
  const kept = made.get(sd) ?? [...families.flatMap((family) => ofFamily(family, chosenFor(family, sd))), ...cases()];
  made.set(sd, kept);
  return kept;
}

function ofFamily(family: Family, choice: Choice): Entry[] {
  const inForms = PART_FORMS.map((form) => entriesOf(family, form, choice));
  return inForms.flat().filter((entry) => entry.form !== 'numeric' || !hasSeveral(directionOf(entry))).flatMap(copies);
}

function directionOf({ parts }: Entry) {
  const [{ family, ask, choices }] = parts as [Part];
  return directions(family, choices[0]!).find(({ name }) => name === ask)!;
}

/** A question without numbers whose arrangements are questions of their own, as often as half of them allow. */
function copies(entry: Entry): Entry[] {
  const [{ family, choices }] = entry.parts as [Part];
  const isFixed = directions(family, choices[0]!)[0]!.givens.length === 0;
  const number = isFixed ? Math.max(1, Math.min(MOST_OF_A_KIND, Math.floor(choices.length / 2))) : 1;
  return Array.from({ length: number }, (_, i) => (i === 0 ? entry : { ...entry, question: `${entry.question} ${i + 1}` }));
}
