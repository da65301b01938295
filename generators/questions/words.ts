import type { SpokenWords } from '../quantities/spoken.ts';

/** The words of one family, blanks in braces: a quantity's is filled with 'P = 12 Ω' where it is given, and with 'P' where it is asked. */
export interface FamilyWords {
  title: string;
  /** Wordings of the situation, by direction, by value of an arrangement, or by both ('both real'); `any` serves what has none of its own. */
  stems: Record<string, string[]>;
  /** Wordings of what is asked, by direction. */
  asks: Record<string, string[]>;
  /** What is said before a line of working, by the quantity it makes; 'both X' is for the direction `both` alone. */
  steps?: Record<string, string>;
  /** What is said to who made a slip, by its name. */
  slips?: Record<string, string>;
  /** Why a set is refused, by the family's condition. */
  reasons?: Record<string, string>;
  /** Words for the blanks of an arrangement, by choice and value. */
  choices?: Record<string, Record<string, Record<string, string>>>;
  /** Answers in words, by the line that decides and its choice. */
  verdicts?: Record<string, Record<string, string>>;
}

/** What all families share. */
export interface QuestionWords {
  /** Words of formulas read aloud. */
  spoken: SpokenWords;
  slips: Record<string, string>;
  choices: Record<string, Record<string, Record<string, string>>>;
  /** Figures below a symbol, read aloud: '1' is 'one'. */
  figures: Record<string, string>;
  /** Names of syllabus topics. */
  tags: Record<string, string>;
  headings: Record<string, string>;
}

/** A symbol read aloud from its TeX: 'l_1' is 'l one', '\\alpha' is 'alpha'. */
export function spokenSymbol(tex: string, { figures }: Pick<QuestionWords, 'figures'>): string {
  return tex
    .replace(/\\(mathrm|text)/g, '')
    .replace(/[{}\\]/g, '')
    .replace(/[_']+/g, ' ')
    .replace(/(?<=\D)\d(?!\d)/g, (figure) => ` ${figures[figure] ?? figure}`)
    .replace(/ +/g, ' ')
    .trim();
}
