import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { balance } from './families/balance.ts';
import { interchange } from './families/interchange.ts';
import { shunt } from './families/shunt.ts';
import type { Family } from './family.ts';

/** All families, in the order of a syllabus. */
export const families: readonly Family[] = [balance, interchange, shunt];

/** The family of that id; UserMistake with the nearest where there is none. */
export function familyNamed(id: string): Family {
  const found = families.find((family) => family.id === id);
  if (found) return found;
  throw new UserMistake(`no family "${id}"${didYouMean(id, families.map((family) => family.id)) || '; slidewire families lists them'}`);
}
