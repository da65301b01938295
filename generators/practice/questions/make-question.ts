import { type Direction, arrangements, directions } from '../../questions/direction.ts';
import { NoGivens, drawGivens } from '../../questions/draw.ts';
import type { Choice, Family } from '../../questions/family.ts';
import { type Question, question } from '../../questions/question.ts';
import type { Wording } from '../../questions/view.ts';
import type { Readings } from '../../quantities/evaluate.ts';
import { type Random, type Streams, streams } from '../../random.ts';
import type { SetCode } from '../set-code.ts';

/** What a student asks to have; the set chooses the rest. */
export interface Wish {
  /** The direction of asking. */
  ask?: string;
  /** Parts of the arrangement. */
  choice: Choice;
}

/** A question of a set. */
export interface PracticeQuestion {
  code: SetCode;
  question: Question;
  wording: Wording;
  /** Answers in words to choose among, by the line that decides. */
  offered: Readonly<Record<string, readonly string[]>>;
}

const ANY: Wish = { choice: {} };

/** The question of a family that a code makes, the same everywhere; the streams, named 'question', have nothing of a sheet or a paper. */
export function makeQuestion(family: Family, code: SetCode, wish: Wish = ANY): PracticeQuestion {
  const direction = directionOf(family, code, wish);
  const asked = streamsOf(family, code).within(direction.name, ...Object.values(direction.choice));
  const wording = asked.of('wording');
  const made = question(direction, givensFor(direction, asked));
  return {
    code,
    question: made,
    wording: { stem: wording.integer(0, MOST_WORDINGS), ask: wording.integer(0, MOST_WORDINGS) },
    offered: offered(made, asked.of('choices')),
  };
}

/** One set in some ten thousand of a rare direction finds nothing worth printing at first; that it does not so often is beyond belief. */
const MOST_ATTEMPTS = 20;

function givensFor(direction: Direction, asked: Streams): Readings {
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
    try {
      return drawGivens(direction, asked.of('givens', attempt));
    } catch (error) {
      if (!(error instanceof NoGivens)) throw error;
    }
  }
  throw new Error(`${direction.family.id}, ${direction.name}: no givens worth printing`);
}

const streamsOf = (family: Family, code: SetCode): Streams => streams(`practice ${code}`).within('question', family.id);

/** What the question of a code asks, and in which arrangement. */
export function directionOf(family: Family, code: SetCode, wish: Wish = ANY): Direction {
  const own = streamsOf(family, code);
  const all = directions(family, arrangementOf(family, wish, own));
  return all.find(({ name }) => name === wish.ask) ?? own.of('direction').pick(all);
}

/** The arrangement of the set with what is wished in place; another where that has not what is asked. */
function arrangementOf(family: Family, wish: Wish, own: Streams): Choice {
  const wished = known(family, wish.choice);
  const choice = { ...own.of('arrangement').pick(arrangements(family)), ...wished };
  const has = (one: Choice) => directions(family, one).some(({ name }) => name === wish.ask);
  if (wish.ask === undefined || has(choice)) return choice;
  const others = arrangements(family).filter((one) => has(one) && Object.entries(wished).every(([name, value]) => one[name] === value));
  return others.length > 0 ? own.of('other arrangement').pick(others) : choice;
}

/** Wordings are counted round, so any large number does. */
const MOST_WORDINGS = 1000;

function known({ choices = {} }: Family, wished: Choice): Choice {
  return Object.fromEntries(Object.entries(wished).filter(([name, value]) => choices[name]?.includes(value)));
}

/** More answers in words than this are not read through. */
const FEW = 9;
const OF_MANY = 4;

/** The choices of each line that decides, in their own order; of very many some, the right one among them. One that numbers a row stands only where there is that row. */
function offered({ direction, readings, verdicts }: Question, random: Random): PracticeQuestion['offered'] {
  const rows = Math.max(...direction.givens.filter((id) => direction.body.quantities[id]!.per !== undefined).map((id) => [readings[id]!].flat().length));
  return Object.fromEntries(
    direction.ask.steps.flatMap(({ id, decide }) => {
      if (!decide) return [];
      const there = Number.isFinite(rows) ? decide.choices.filter((choice) => !(Number(choice) > rows)) : decide.choices;
      if (there.length <= FEW) return [[id, there]];
      const some = [verdicts[id]!, ...random.shuffle(there.filter((choice) => choice !== verdicts[id])).slice(0, OF_MANY - 1)];
      return [[id, there.filter((choice) => some.includes(choice))]];
    }),
  );
}
