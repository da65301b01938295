import { quantityLine } from '../quantities/working.ts';
import { round } from '../quantities/written.ts';
import { plainText } from './plain-text.ts';
import type { PaperQuestion, Version } from './paper.ts';
import { type QuestionView, type Sentence, type Shown, questionView } from './view.ts';
import type { FamilyWords, QuestionWords } from './words.ts';

/** An option under its letter: a value, or a sentence. */
export interface OptionView {
  letter: string;
  isRight: boolean;
  value?: Shown;
  say?: Sentence;
  /** What is said to who chose it. */
  feedback?: Sentence;
}

export interface PaperQuestionView {
  number: number;
  form: PaperQuestion['form'];
  marks: number;
  view: QuestionView;
  options: OptionView[];
  /** Lines of answer space. */
  space: number;
}

const LETTERS = 'ABCDEFGH';

/** All questions of a version, numbered, for the candidate's page and the mark scheme. */
export function versionView({ questions }: Version, wordsOf: (family: string) => FamilyWords, shared: QuestionWords): PaperQuestionView[] {
  return questions.map((one, i) => {
    const words = wordsOf(one.question.direction.family.id);
    const view = questionView(one.question, words, shared, one.wording);
    return { number: i + 1, form: one.form, marks: one.marks, view, options: optionViews(one, view, words, shared), space: one.form === 'choice' ? 0 : 1 + 2 * one.marks };
  });
}

function optionViews({ options = [], question }: PaperQuestion, view: QuestionView, words: FamilyWords, shared: QuestionWords): OptionView[] {
  const [answer] = question.answers;
  return options.map(({ value, slip, isRight }, i): OptionView => {
    const common = { letter: LETTERS[i]!, isRight };
    if (typeof value === 'string') {
      const { id } = question.direction.ask.steps.find(({ decide }) => decide)!;
      return { ...common, say: { sentence: words.verdicts![id]![value]!, blanks: view.stem.blanks } };
    }
    const written = isRight ? answer!.shown : round(value, { figures: 3 }, 'even');
    const line = quantityLine(written, question.program.step(answer!.id).unit, shared.spoken);
    const feedback = view.slips.find(({ id }) => id === slip)?.say;
    return { ...common, value: { ...line, text: plainText(line.tex) }, ...(feedback && { feedback }) };
  });
}
