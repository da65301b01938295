import { z } from 'zod';
import { asChoice, asFlag, asNumber, asRange, asText } from './from-text.ts';

/** What a user is told about one entry of the order. */
export interface Entry {
  /** What may be written, as it fits after 'it takes': 'a whole number from 3 to 6'. */
  takes: string;
  /** What it is for. */
  meaning: string;
  /** The command-line flag, where it is not the entry's own name. */
  flag?: string;
  /** The flag may be given several times. */
  many?: true;
  /** What stands where it is left out, where no single word can say it. */
  without?: string;
  /** Words to offer where one is mistyped. */
  words?: readonly string[];
}

/** The entry that belongs to each field of the schema. */
export const entries = z.registry<Entry>();

/** One printable line of so many letters at most. */
export function text(most: number, least = 0) {
  const fits = (value: string) => [...value].length <= most && !/\p{Cc}/u.test(value);
  return z.preprocess(asText, z.string().min(least).refine(fits));
}

export function number(low: number, high: number) {
  return z.preprocess(asNumber, z.number().min(low).max(high));
}

export function wholeNumber(low: number, high: number) {
  return z.preprocess(asNumber, z.number().int().min(low).max(high));
}

export function yesOrNo() {
  return z.preprocess(asFlag, z.boolean());
}

export function choice<const Word extends string>(words: readonly Word[]) {
  return z.preprocess(asChoice(words), z.enum(words as readonly [Word, ...Word[]]));
}

/** Two lengths on a scale, `apart` or more from each other. */
export function stretch(low: number, high: number, apart: number) {
  const fits = ([from, to]: [number, number]) => from >= low && to <= high && to - from >= apart;
  return z.preprocess(asRange, z.tuple([z.number(), z.number()]).refine(fits));
}

/** What an entry with a choice of words takes. */
export function oneOf(words: readonly string[]): Pick<Entry, 'takes' | 'words'> {
  return { takes: words.length === 1 ? `the word ${words[0]}` : `one of the words ${words.join(', ')}`, words };
}

/** What an entry that is on or off takes. */
export const YES_OR_NO = { takes: 'yes or no', words: ['yes', 'no'] } as const satisfies Partial<Entry>;
