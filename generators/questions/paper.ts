import { UserMistake } from '../mistake.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Streams } from '../random.ts';
import { type Direction, arrangements, choiceOf, directions } from './direction.ts';
import { NoGivens, drawGivens } from './draw.ts';
import type { Exact } from './exact.ts';
import type { Choice, Family } from './family.ts';
import { areAlike } from './number.ts';
import { type Option, options } from './options.ts';
import { type Question, question } from './question.ts';

/** How a question is put: a number to be found, options to choose from, or a part for each answer. */
export type Form = 'numeric' | 'choice' | 'structured';

/** A question that is asked for; what is left open is chosen once, the same for all versions. */
export interface PaperItem {
  family: Family;
  direction?: string;
  choice: Choice;
  form: Form;
  /** In place of the marks of the working. */
  marks?: number;
}

export interface PaperQuestion {
  question: Question;
  form: Form;
  marks: number;
  options?: Option[];
  wording: { stem: number; ask: number };
}

/** A paper in one of its versions. */
export interface Version {
  name: string;
  questions: PaperQuestion[];
}

/** Draws within which a right answer is put at a wanted letter. */
const PLACED_IN = 60;
const DRAWN_IN = 20_000;

/**
 * The versions of a paper: the same families, directions and forms in each, all answers different, no question twice and
 * none of those used before. UserMistake with the place of what cannot be met.
 */
export function makeVersions(items: readonly PaperItem[], names: readonly string[], random: Streams, used: ReadonlySet<string> = new Set()): Version[] {
  const versions: Version[] = names.map((name) => ({ name, questions: [] }));
  items.forEach((item, place) => {
    const settled = settle(item, place, random);
    versions.forEach((version, v) => {
      const earlier = versions.slice(0, v).map(({ questions }) => questions[place]!.question);
      const taken = new Set([...used, ...version.questions.map(({ question: other }) => keyOf(other))]);
      version.questions.push(make(item, settled[v % settled.length]!, { place, v, random: random.within('item', place, v), earlier, taken }));
    });
  });
  return versions;
}

/** What a question is known by, so that it is not asked again. */
export function keyOf({ direction, readings }: Pick<Question, 'direction' | 'readings'>): string {
  return JSON.stringify([direction.family.id, direction.choice, direction.name, Object.entries(readings).sort(([a], [b]) => (a < b ? -1 : 1))]);
}

/** The directions that the versions take turns in: one, or where the answer is in words and left open, one an arrangement. */
function settle({ family, choice, direction, form }: PaperItem, place: number, random: Streams): Direction[] {
  const draw = random.of('settle', place);
  const open = arrangements(family).filter((one) => Object.entries(choice).every(([name, value]) => one[name] === value));
  const fitting = (one: Choice) => directions(family, one).filter(({ name, ask }) => (direction === undefined || name === direction) && fits(form, ask.finds.length));
  const [first] = draw.shuffle(open);
  const found = first && fitting(choiceOf(family, first));
  if (!found || found.length === 0) throw refused(place, family, direction === undefined ? `it has no direction for the form ${form}` : `it has no direction "${direction}" for the form ${form}`);
  const chosen = draw.pick(found);
  const inWords = chosen.ask.finds.every((id) => chosen.ask.steps.some((step) => step.id === id && step.decide));
  return inWords ? draw.shuffle(open).flatMap((one) => directions(family, one).filter(({ name }) => name === chosen.name)) : [chosen];
}

const fits = (form: Form, answers: number) => (form === 'choice' ? answers === 1 : form === 'structured' ? answers > 1 : true);

interface Making {
  place: number;
  v: number;
  random: Streams;
  earlier: readonly Question[];
  taken: ReadonlySet<string>;
}

function make({ family, form, marks }: PaperItem, direction: Direction, { place, v, random, earlier, taken }: Making): PaperQuestion {
  const isNew = (readings: Readings, values: Exact) => {
    const key = keyOf({ direction, readings });
    // Where the answer is in words, the options come in another order, or the situation is another.
    return !taken.has(key) && earlier.every((other) => differs(other, values) && ((form === 'choice' && !hasOwnOrder(direction)) || keyOf(other) !== key));
  };
  const stream = random.of('draw');
  const shuffle = random.of('order');
  const made = (readings: Readings): PaperQuestion => {
    const worked = question(direction, readings);
    const all = form === 'choice' ? options(worked, shuffle) : undefined;
    return { question: worked, form, marks: marks ?? (form === 'choice' ? 1 : worked.marks), wording: { stem: v, ask: v }, ...(all && { options: all }) };
  };
  try {
    let last: PaperQuestion | undefined;
    for (let i = 0; i < (form === 'choice' ? PLACED_IN : 1) || (form === 'choice' && !last && i < 4 * PLACED_IN); i++) {
      const one = made(drawGivens(direction, stream, isNew, DRAWN_IN));
      if (form !== 'choice') return one;
      if (!one.options) continue;
      last = one;
      const wanted = (place + v) % one.options.length;
      // Numbers fall or rise, whichever puts the right one at the letter whose turn it is.
      const orders = typeof one.options[0]!.value === 'number' ? [one.options, [...one.options].reverse()] : [one.options];
      const placed = orders.find((order) => order[wanted]!.isRight);
      if (placed) return { ...one, options: placed };
    }
    if (last) return last;
  } catch (error) {
    if (error instanceof NoGivens) throw refused(place, family, `its values leave no ${v + 1} questions with different answers that were not used before; ask for fewer versions, or another direction`);
    throw error;
  }
  throw refused(place, family, `${direction.name} has too few slips for options to choose from; take the form numeric`);
}

/** Options that always stand in the same order tell no two versions apart. */
const hasOwnOrder = ({ ask }: Direction) => ask.steps.some(({ decide }) => decide?.inOrder);

/** Every number that is asked differs from that of another version, beyond rounding; answers in words have their own arrangement. */
function differs({ answers }: Question, values: Exact): boolean {
  return answers.every(({ id, exact }) => !values.has(id) || !areAlike(values.get(id)![0]!, exact));
}

function refused(place: number, { id }: Family, why: string): UserMistake {
  return new UserMistake([{ field: `questions ${place + 1}`, what: `${id}: ${why}` }]);
}
