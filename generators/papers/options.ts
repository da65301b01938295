import { areAlike } from '../questions/number.ts';
import type { Question } from '../questions/question.ts';
import type { Random } from '../random.ts';

/** An option of a multiple-choice question: a number, or an answer in words by its name. */
export interface Option {
  value: number | string;
  /** Which of the question's slips it is the value of; nothing at the right one, and at other answers in words. */
  slip?: number;
  isRight: boolean;
}

/** As many options as a question has at most. */
export const MOST = 4;
/** Fewer make no choice. */
const FEWEST = 3;

export const rightPlace = (options: readonly Option[]): number => options.findIndex(({ isRight }) => isRight);

/**
 * Every set of options that a question can have, numbers in rising order, wrong ones the values of slips that lie apart
 * from the answer and from each other; none where there are too few.
 */
export function optionSets({ answers, slips, verdicts, direction }: Question, random: Random): Option[][] {
  const [answer] = answers;
  if (!answer) return inWords(direction, verdicts, random);
  if (answers.length > 1) return [];
  const wrong = slips
    .map(({ answers: values }, slip) => ({ value: values[answer.id] ?? answer.exact, slip, isRight: false }))
    .filter(({ value }) => value > 0 && !areAlike(value, answer.exact));
  const apart = wrong.filter(({ value }, place) => wrong.slice(0, place).every((other) => !areAlike(value, other.value)));
  const size = Math.min(MOST - 1, apart.length);
  if (size < FEWEST - 1) return [];
  const right = { value: answer.exact, isRight: true };
  return subsets(apart, size).map((some) => [right, ...some].sort((a, b) => a.value - b.value));
}

function subsets<T>(list: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return list.flatMap((one, place) => subsets(list.slice(place + 1), size - 1).map((rest) => [one, ...rest]));
}

/** The right answer in words among others of the same line: in their own order, or in random ones with the right one in each place. */
function inWords({ ask }: Question['direction'], verdicts: Question['verdicts'], random: Random): Option[][] {
  const decides = ask.steps.find(({ decide }) => decide);
  const right = decides && verdicts[decides.id];
  if (!decides?.decide || right === undefined) return [];
  const { choices, inOrder } = decides.decide;
  const option = (value: string): Option => ({ value, isRight: value === right });
  if (inOrder) return [choices.map(option)];
  const others = random.shuffle(choices.filter((choice) => choice !== right)).slice(0, MOST - 1);
  return Array.from({ length: others.length + 1 }, (_, place) => [...others.slice(0, place), right, ...others.slice(place)].map(option));
}
