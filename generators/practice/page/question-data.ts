import type { MarkingWords } from '../../marking/words.ts';
import type { Family } from '../../questions/family.ts';
import type { FamilyWords, QuestionWords } from '../../questions/words.ts';
import type { ReadyFormula } from '../formula.ts';
import type { AnswerWords } from '../questions/fillings.ts';
import type { PracticeWords } from './data.ts';

/** Words that the pages of all families share; the build writes them into the script that they share. */
export interface QuestionPageWords {
  practice: PracticeWords;
  answers: AnswerWords;
  questions: QuestionWords;
  plain: MarkingWords['plain'];
}

/** What the build writes into the script of one family. */
export interface FamilyData {
  family: Family;
  words: FamilyWords;
  formulas: Readonly<Record<string, ReadyFormula>>;
  signed: readonly string[];
  scientific: readonly string[];
}
