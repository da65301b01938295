import type { Readings } from '../quantities/evaluate.ts';
import type { Interval } from '../quantities/step.ts';
import type { Random, Streams } from '../random.ts';
import { type Direction, directions } from '../questions/direction.ts';
import { NoGivens, drawGivens } from '../questions/draw.ts';
import type { Exact } from '../questions/exact.ts';
import { areAlike } from '../questions/number.ts';
import { type Question, question } from '../questions/question.ts';
import { type Part, isInWords } from './entry.ts';
import { readOff, suitsFigure } from './figures.ts';
import { type InCase, acceptedOn, inCase } from './in-case.ts';
import { questionInParts } from './in-parts.ts';
import type { PartForm } from './forms.ts';
import type { Letters } from './letters.ts';
import { type Option, optionSets } from './options.ts';

/** One question of one version. */
export interface Made {
  question: Question;
  form: PartForm;
  marks: number;
  options?: Option[];
  /** What is accepted for each answer, off a figure within its latitude. */
  accept: readonly Interval[];
  /** Which of the wordings it has. */
  wording: number;
  /** Givens that the candidate has found in earlier parts of a case. */
  carried: readonly string[];
}

/** No question is left that is as it has to be. */
export class Exhausted extends Error {
  override readonly name = 'Exhausted';
}

/** What a question is known by, so that it is not asked again. */
export function keyOf({ direction, readings }: Pick<Question, 'direction' | 'readings'>): string {
  return JSON.stringify([direction.family.id, direction.choice, direction.name, Object.entries(readings).sort(([a], [b]) => (a < b ? -1 : 1))]);
}

/** The directions that versions take turns in: that of one arrangement, the first or a later one by chance; all of them where the answer is in words. */
export function turns({ family, ask, choices }: Part, random: Random, arrangement: number): Direction[] {
  const all = random.shuffle(choices).map((choice) => directions(family, choice).find(({ name }) => name === ask)!);
  return isInWords(all[0]!) ? all : [all[arrangement % all.length]!];
}

export interface Making {
  /** Counted from 0; decides the wording. */
  version: number;
  random: Streams;
  /** The same question in versions that this one has to differ from in every number. */
  apartFrom: readonly Made[];
  /** Questions that must not be asked: of earlier papers, and of this version. */
  taken: ReadonlySet<string>;
  letters: Letters;
  /** The parts of the same case before this one. */
  earlier: readonly Made[];
}

/** Draws in search of one set of givens, and sets drawn to put the right option where it is wanted. */
const DRAWN_IN = 20_000;
const PLACED_IN = 40;
/** The same where other numbers of the case are settled; new ones are settled sooner than more are drawn. */
const BOUND_IN = 400;

/** A part of a paper in one version. @throws Exhausted */
export function make(part: Part, turn: readonly Direction[], making: Making): Made {
  const its = inCase(whoseTurn(turn, making), part.restated ?? {}, making.earlier);
  const draw = drawing(its, part.form, making);
  const carried = Object.keys(its.carried);
  const one = (worked: Question, options?: Option[]): Made => ({ question: worked, form: part.form, marks: part.marks, ...(options && { options }), accept: acceptedOn(worked, its.carried, accepted(worked, part.form)), wording: making.version, carried });
  if (part.form !== 'choice') return one(draw());
  const shuffle = making.random.of('order');
  let kept: Made | undefined;
  for (let i = 0; i < PLACED_IN; i++) {
    const worked = draw();
    const best = making.letters.best(optionSets(worked, shuffle).filter((options) => isNewOrder(worked, options, making)));
    if (!best) continue;
    kept = one(worked, best.options);
    if (best.isLeast) break;
  }
  if (!kept) throw new Exhausted('too few of its slips show for options to choose from');
  return kept;
}

/** In words, an arrangement that no other version has; where all have been had, one that is new to this version. */
function whoseTurn(turn: readonly Direction[], { taken, apartFrom }: Making): Direction {
  if (!isInWords(turn[0]!)) return turn[0]!;
  const fixed = ({ givens }: Direction) => givens.length === 0;
  const free = turn.filter((one) => !fixed(one) || !taken.has(keyOf({ direction: one, readings: {} })));
  if (free.length === 0) throw new Exhausted('all its questions were asked before');
  const [apart] = free.filter((one) => apartFrom.every(({ question: other }) => JSON.stringify(other.direction.choice) !== JSON.stringify(one.choice)));
  return apart ?? free[apartFrom.length % free.length]!;
}

function drawing({ direction, isBound }: InCase, form: PartForm, { random, apartFrom, taken }: Making): () => Question {
  const stream = random.of('draw');
  const isNew = (readings: Readings, values: Exact) => {
    const key = keyOf({ direction, readings });
    // Options in another order make a question in words another one.
    const mayRepeat = form === 'choice' && isInWords(direction);
    if (form === 'figure' && !suitsFigure(direction, readings)) return false;
    return !taken.has(key) && apartFrom.every(({ question: other }) => differs(other, values) && (mayRepeat || keyOf(other) !== key));
  };
  return () => {
    try {
      const readings = drawGivens(direction, stream, isNew, isBound ? BOUND_IN : DRAWN_IN);
      return form === 'structured' ? questionInParts(direction, readings) : question(direction, readings);
    } catch (error) {
      if (error instanceof NoGivens) throw new Exhausted('its values leave no further question with other answers that was not asked before');
      throw error;
    }
  };
}

function isNewOrder(worked: Question, options: readonly Option[], { apartFrom }: Making): boolean {
  const same = apartFrom.filter(({ question: other }) => keyOf(other) === keyOf(worked));
  return same.every(({ options: others = [] }) => others.some(({ value }, place) => value !== options[place]?.value));
}

/** Every number that is asked differs from that of another version, beyond rounding. */
function differs({ answers }: Question, values: Exact): boolean {
  return answers.every(({ id, exact }) => !values.has(id) || !areAlike(values.get(id)![0]!, exact));
}

/** Accept ranges; off a figure, those of every reading that it allows. */
function accepted(worked: Question, form: PartForm): Interval[] {
  const own = worked.answers.map(({ accept }) => accept);
  if (form !== 'figure') return own;
  const others = readOff(worked.direction, worked.readings).map((readings) => question(worked.direction, readings).answers);
  return own.map(([low, high], i) => [Math.min(low, ...others.map((answers) => answers[i]!.accept[0])), Math.max(high, ...others.map((answers) => answers[i]!.accept[1]))]);
}
