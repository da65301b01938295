import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import type { Random } from '../random.ts';
import { arrangements, choiceOf, directions } from '../questions/direction.ts';
import type { Choice, Family } from '../questions/family.ts';
import { type Entry, entriesOf, fits, usualForm } from './entry.ts';
import type { PartForm } from './forms.ts';

/** A question that a setter names; what is left open is settled once for all versions. */
export interface Named {
  family: Family;
  choice: Choice;
  ask?: string;
  form?: PartForm;
  /** In place of the mark of a question with options. */
  marks?: number;
}

/** What two named questions have in common where they are one: the direction, in the same arrangements. */
export const sameness = ({ question, parts }: Entry): string => JSON.stringify([question, parts.map(({ choices }) => choices)]);

/** The entry of a named question, of which `taken` are named already. UserMistake where there is none, or no other. */
export function entryNamed({ family, choice, ask, form, marks }: Named, random: Random, taken: ReadonlySet<string> = new Set()): Entry {
  const asks = [...new Set(arrangements(family).flatMap((one) => directions(family, one).map(({ name }) => name)))];
  if (ask !== undefined && !asks.includes(ask)) throw new UserMistake(`${family.id} has no direction "${ask}"${didYouMean(ask, asks) || `; it has ${asks.join(', ')}`}`);
  const whole = directions(family, choiceOf(family, choice));
  const usual = usualForm(whole.find(({ name }) => ask === undefined || name === ask) ?? whole[0]!);
  const found = entriesOf(family, form ?? usual, choice).filter(({ parts }) => ask === undefined || parts[0]!.ask === ask);
  if (found.length === 0) throw new UserMistake(`${family.id}${ask === undefined ? '' : `, ${ask},`} cannot be put in the form ${form ?? usual}${offered(family, choice, ask)}`);
  const others = found.filter((one) => !taken.has(sameness(one)));
  if (others.length === 0) throw new UserMistake(`${family.id}${ask === undefined ? '' : `, ${ask},`} is asked before in this paper, if in another form; name another direction, or write "count: 2" in one place`);
  const entry = random.pick(others);
  if (marks === undefined || marks === entry.marks) return entry;
  if (entry.parts[0]!.form !== 'choice') throw new UserMistake(`its working carries ${entry.marks} marks, line by line; leave out "marks: ${marks}"`);
  return { ...entry, marks, parts: entry.parts.map((part) => ({ ...part, marks })) };
}

function offered(family: Family, choice: Choice, ask: string | undefined): string {
  const forms = (['numeric', 'choice', 'words', 'figure', 'structured'] as const).filter((form) =>
    directions(family, choiceOf(family, choice)).some((direction) => (ask === undefined || direction.name === ask) && fits(direction, form)),
  );
  return forms.length === 0 ? '' : `; it can in ${forms.join(', ')}`;
}
