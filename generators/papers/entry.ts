import { type Direction, arrangements, directions } from '../questions/direction.ts';
import type { Choice, Family } from '../questions/family.ts';
import { difficulty, marks as marksOf } from '../questions/question.ts';
import { readsOff } from './figures.ts';
import { inParts, partsOf } from './in-parts.ts';
import type { Form, PartForm } from './forms.ts';
import type { Restated } from './in-case.ts';

/** One direction of a family, put in one form; versions have it in any of these arrangements. */
export interface Part {
  family: Family;
  ask: string;
  choices: readonly Choice[];
  form: PartForm;
  marks: number;
  /** What its quantities are in a case, where it is part of one. */
  restated?: Restated;
}

/** What a paper is put together from: a question, or a case with several. */
export interface Entry {
  /** Entries of one question stand at most once in a paper, whatever their form. */
  question: string;
  form: Form;
  topic: string;
  level: string;
  marks: number;
  parts: readonly Part[];
  /** The story of a case in content. */
  story?: string;
}

/** Whether all that is asked is answered in words. */
export const isInWords = ({ ask }: Direction): boolean => ask.finds.every((id) => decides({ ask }, id));

const decides = ({ ask }: Pick<Direction, 'ask'>, id: string) => ask.steps.some((step) => step.id === id && step.decide);

/** Three options need two slips. */
const LEAST_SLIPS = 2;

/** Whether a direction can be put in this form. */
export function fits(direction: Direction, form: PartForm): boolean {
  const { ask } = direction;
  const slips = ask.steps.reduce((sum, step) => sum + Object.keys(step.slips ?? {}).length, 0);
  switch (form) {
    case 'words':
      return isInWords(direction) && ask.steps.every(({ decide }) => !decide?.inOrder);
    case 'choice':
      return ask.finds.length === 1 && (isInWords(direction) || slips >= LEAST_SLIPS);
    case 'structured':
      return partsOf(direction).length > 1 && !ask.finds.some((id) => decides(direction, id));
    case 'figure':
      return readsOff(direction).length > 0 && !ask.finds.some((id) => decides(direction, id));
    case 'numeric':
      return !isInWords(direction);
  }
}

/** Whether a direction has several answers, so that it is put in parts unless a setter asks for it as one. */
export const hasSeveral = ({ ask }: Direction): boolean => ask.finds.length > 1;

/** The form that a direction has by itself. */
export function usualForm(direction: Direction): PartForm {
  const forms = ['words', ...(hasSeveral(direction) ? ['structured' as const] : []), 'numeric', 'choice'] as const;
  return forms.find((form) => fits(direction, form))!;
}

/** Marks in a form: one for a right letter, one more for a reading or for each part; else those of the working. */
function marksIn(direction: Direction, form: PartForm): number {
  if (form === 'choice') return 1;
  return marksOf(form === 'structured' ? inParts(direction) : direction) + (form === 'figure' ? 1 : 0);
}

/** The topic that a question counts in: the first of its family besides the bridge itself. */
export const topicOf = ({ tags }: Family): string => tags.find((tag) => tag !== 'metre-bridge') ?? 'metre-bridge';

/** Every way to put a family in a form, directions and arrangements that cost the same together. */
export function entriesOf(family: Family, form: PartForm, choice: Choice): Entry[] {
  const open = arrangements(family).filter((one) => Object.entries(choice).every(([name, value]) => one[name] === value));
  const found = new Map<string, Entry & { parts: [Part & { choices: Choice[] }] }>();
  for (const arranged of open) {
    for (const direction of directions(family, arranged)) {
      if (!fits(direction, form)) continue;
      const level = String(difficulty(direction).level);
      const marks = marksIn(direction, form);
      const key = JSON.stringify([direction.name, level, marks]);
      const kept = found.get(key);
      if (kept) kept.parts[0].choices.push(arranged);
      else found.set(key, { ...entry(direction, form), level, marks, parts: [{ family, ask: direction.name, choices: [arranged], form, marks }] });
    }
  }
  return [...found.values()];
}

function entry({ family, name, ask }: Direction, form: PartForm): Pick<Entry, 'question' | 'form' | 'topic'> {
  const isOrdered = ask.steps.some(({ decide }) => decide?.inOrder);
  return { question: `${family.id} ${name}`, form: form === 'choice' && isOrdered ? 'assertion' : form, topic: topicOf(family) };
}
