import { fill } from '../quantities/spoken.ts';
import type { Unreadable, WhyUnreadable } from './entry.ts';
import type { HeadWords } from './heads.ts';
import type { ReasonWords } from './reasons.ts';

type Sentences<Name extends string> = Record<Name, string>;

/** What a slip is called, and what to do about it. */
export interface SlipWords {
  /** A few words for a chart; its id where it is left out. */
  name?: string;
  says: string;
  do: string;
}

/** The words of marking, as content/LANGUAGE/marking.yaml holds them. */
export interface MarkingWords {
  heads: HeadWords;
  feedback: Sentences<
    | 'title' | 'answer' | 'row' | 'wrote' | 'accepted' | 'marks' | 'total' | 'of' | 'from' | 'notEntered' | 'leftBlank' | 'struckOut' | 'incomplete' | 'onOwn'
    | 'allRight' | 'what' | 'says' | 'either' | 'way' | 'both' | 'unexplained' | 'byTheKey' | 'unitMissing' | 'once' | 'each' | 'unitWrong' | 'tooMany'
    | 'tooFew' | 'or'
  >;
  class: Sentences<
    | 'title' | 'scheme' | 'marked' | 'mean' | 'distribution' | 'distributionAlt' | 'distributionBar' | 'marksAxis' | 'studentsAxis' | 'hardest' | 'hardestAlt'
    | 'hardestBar' | 'commonest' | 'commonestAlt' | 'commonestBar' | 'noSlips' | 'unexplained' | 'table' | 'total' | 'absent' | 'incomplete' | 'changed'
    | 'changedNone' | 'change' | 'otherScheme' | 'gone' | 'typedMarks' | 'totalMarks' | 'why' | 'whyLead' | 'whyLine'
    | 'copies' | 'copiesLead' | 'copiesLine' | 'readings' | 'answers' | 'sheetOf' | 'wroteOf' | 'same'
  >;
  marksCsv: Sentences<'total' | 'full' | 'note' | 'marks'>;
  typing: Sentences<
    | 'title' | 'lead' | 'leadAssumed' | 'kept' | 'notKept' | 'keysTitle' | 'student' | 'find' | 'notFound' | 'complete' | 'sheet' | 'typed' | 'stands'
    | 'right' | 'carried' | 'byTheKey' | 'wrong' | 'unreadable' | 'accepted' | 'unexplained' | 'either' | 'unitCosts' | 'unitHasCost' | 'unitWrong'
    | 'tooMany' | 'tooFew' | 'notEntered' | 'leftBlank' | 'struckOut' | 'soFar' | 'total' | 'done' | 'save' | 'saved' | 'unread' | 'copy'
  > &
    Record<'keys' | 'keysTyped' | 'keysAssumed', { press: string; does: string }[]>;
  /** Why an answer cannot be read, said of it; blank {ends}. */
  unreadable: Sentences<WhyUnreadable>;
  key: Sentences<'coincide' | 'one'>;
  reasons: ReasonWords;
  /** Slips that any number can suffer; blank {row}. */
  plain: Record<string, SlipWords>;
  /** Slips of the catalogue, by their id in the steps. */
  slips: Record<string, SlipWords>;
}

/** The words of a slip; one that content has none for yet is called by its id. */
export function slipWords(words: MarkingWords, slip: string): SlipWords {
  return words.plain[slip] ?? words.slips[slip] ?? { says: `${slip[0]!.toUpperCase()}${slip.slice(1)}.`, do: '' };
}

export function whyUnreadable({ why, ends = '' }: Unreadable, { unreadable }: Pick<MarkingWords, 'unreadable'>): string {
  return fill(unreadable[why], { ends });
}
