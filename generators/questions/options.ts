import type { Random } from '../random.ts';
import { areAlike } from './number.ts';
import type { Question } from './question.ts';

/** An option of a multiple-choice question: a number, or an answer in words by its name. */
export interface Option {
  value: number | string;
  /** The slip that it is the value of; nothing at the right one, and at other answers in words. */
  slip?: string;
  isRight: boolean;
}

/** As many options as a question has at most. */
const MOST = 4;
/** Fewer make no choice. */
export const FEWEST = 3;

/** The options in rising order, wrong ones the values of slips; nothing where there are too few slips that show. */
export function options({ answers, slips, verdicts, direction }: Question, random: Random): Option[] | undefined {
  const [answer] = answers;
  if (answers.length === 0) return inWords(direction, verdicts, random);
  if (answers.length > 1 || !answer) return undefined;
  const wrong = slips
    .map(({ id, answers: values }): Option => ({ value: values[answer.id]!, slip: id, isRight: false }))
    .filter(({ value }) => typeof value === 'number' && value > 0 && !areAlike(value, answer.exact));
  const apart = wrong.filter((one, place) => wrong.slice(0, place).every((other) => !areAlike(one.value as number, other.value as number)));
  const all: Option[] = [{ value: answer.exact, isRight: true }, ...apart.slice(0, MOST - 1)];
  return all.length < FEWEST ? undefined : all.sort((a, b) => (a.value as number) - (b.value as number));
}

/** The right answer in words among others of the same line, in their own order or a random one. */
function inWords({ ask }: Question['direction'], verdicts: Question['verdicts'], random: Random): Option[] | undefined {
  const [decides] = ask.steps.filter(({ decide }) => decide);
  const right = decides && verdicts[decides.id];
  if (!decides?.decide || right === undefined) return undefined;
  if (decides.decide.inOrder) return decides.decide.choices.map((value) => ({ value, isRight: value === right }));
  const others = random.shuffle(decides.decide.choices.filter((choice) => choice !== right)).slice(0, MOST - 1);
  return others.length < 1 ? undefined : random.shuffle([right, ...others]).map((value) => ({ value, isRight: value === right }));
}
