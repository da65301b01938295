import { UserMistake } from '../mistake.ts';
import type { Streams } from '../random.ts';
import type { Direction } from '../questions/direction.ts';
import { type Demands, totalOf } from './demands.ts';
import type { Entry } from './entry.ts';
import { FORMS } from './forms.ts';
import { Exhausted, type Made, type Making, keyOf, make, turns } from './item.ts';
import { letters } from './letters.ts';
import { chosen } from './why.ts';

/** Who a version is for; a candidate of a class has a roll. */
export interface For {
  name: string;
  roll?: string;
}

/** A paper in one version: each entry with its parts as they are asked. */
export interface Version extends For {
  items: { entry: Entry; parts: Made[] }[];
}

/** What a paper is made of. */
export interface PaperPlan {
  /** Questions that the setter names. */
  set: readonly Entry[];
  /** What the others are chosen from, to meet the demands. */
  pool: readonly Entry[];
  demands: Demands;
  /** Versions, or the candidates of a class. */
  whose: readonly For[];
  /** Whether each candidate has a paper of their own; then answers differ from those of neighbours in the list, and no numbers come twice. */
  isClass: boolean;
  /** Keys of questions that were asked in earlier papers. */
  used: ReadonlySet<string>;
}

/** Other questions are tried for those that cannot be had in so many versions, so often. */
const TRIES = 12;

/** Candidates in a list who may sit near each other. */
const NEIGHBOURS = 4;

/**
 * All versions of a paper: the same questions and forms in each, with other numbers. UserMistake where a demand cannot be
 * met or a question that is named cannot be had in so many versions.
 */
export function makePaper(plan: PaperPlan, random: Streams): Version[] {
  let pool = plan.pool;
  for (let i = 0; i < TRIES; i++) {
    const entries = i === 0 ? selection(plan, random) : selectionAgain({ ...plan, pool }, random, i);
    const versions: Version[] = plan.whose.map((one) => ({ ...one, items: [] }));
    // Cases first: what they ask in words is fixed, and others make way.
    const inTurn = [...entries.entries()].sort(([, a], [, b]) => Number(b.form === 'case') - Number(a.form === 'case'));
    const failed = new Set(inTurn.filter(([place, entry]) => !fill(versions, entry, place, plan, random)).map(([, { question }]) => question));
    if (failed.size === 0) return versions;
    pool = pool.filter(({ question }) => !failed.has(question));
  }
  const versions = plan.whose.length;
  if (plan.used.size === 0) throw new UserMistake([{ field: 'versions', what: `too few questions can be had in ${versions} versions that differ in every number; ask for fewer versions or fewer marks, or give each candidate of a class list a paper` }]);
  throw new UserMistake([{ field: 'used', what: `too many questions were asked before for ${versions} versions; ask for fewer versions, or start another file of used questions` }]);
}

/** The questions of a paper: those that are named, and those chosen to its demands, in the order of their forms. */
export function selection({ set, pool, demands }: Pick<PaperPlan, 'set' | 'pool' | 'demands'>, random: Streams, attempt = 0): readonly Entry[] {
  if (totalOf(demands) === undefined) return set;
  const others = chosen(pool, demands, set, random.of('choose', attempt));
  if (others.length === 0) return set;
  const rank = ({ form, level }: Entry) => 10 * FORMS.indexOf(form) + Number(level);
  return [...set, ...others].sort((a, b) => rank(a) - rank(b));
}

/** Without the questions that could not be had; what is told of a demand says so. */
function selectionAgain(plan: PaperPlan, random: Streams, attempt: number): readonly Entry[] {
  try {
    return selection(plan, random, attempt);
  } catch (error) {
    if (!(error instanceof UserMistake)) throw error;
    throw new UserMistake(error.mistakes.map((mistake) => ({ ...mistake, what: `${mistake.what} (without those that were asked before, or cannot be had in so many versions)` })));
  }
}

/** Puts an entry into every version; no where it cannot be had so often, which a named one must not be. */
function fill(versions: readonly Version[], entry: Entry, place: number, plan: PaperPlan, random: Streams): boolean {
  const own = random.within('item', place);
  const stand = entry.parts.map((part, p) => turns(part, own.of('turn', p)));
  try {
    versions.forEach((version, v) => {
      for (let attempt = 0; !fillOne(version, entry, stand, { place, v, attempt, before: versions.slice(0, v) }, plan, random); attempt++);
    });
    return true;
  } catch (error) {
    if (!(error instanceof Exhausted)) throw error;
    const named = plan.set.indexOf(entry);
    if (named < 0) return false;
    throw new UserMistake([{ field: `questions ${named + 1}`, what: `${entry.question}: ${error.message}; ask for fewer versions, another direction or another form` }]);
  }
}

/** A case whose later parts do not come out with the numbers of its first is begun again so often. */
const BEGUN = 60;

interface Where {
  place: number;
  /** The place of the version among all, and those before it. */
  v: number;
  before: readonly Version[];
  /** Counted from 0. */
  attempt: number;
}

/** Puts an entry into one version; no where another attempt may. @throws Exhausted */
function fillOne(version: Version, entry: Entry, stand: readonly (readonly Direction[])[], where: Where, plan: PaperPlan, random: Streams): boolean {
  const item = { entry, parts: [] as Made[] };
  version.items[where.place] = item;
  for (const [p, part] of entry.parts.entries()) {
    try {
      item.parts.push(make(part, stand[p]!, making(version, p, where, plan, random)));
    } catch (error) {
      if (error instanceof Exhausted && p > 0 && where.attempt < BEGUN) return false;
      throw error;
    }
  }
  return true;
}

function making(version: Version, p: number, { place, v, before, attempt }: Where, plan: PaperPlan, random: Streams): Making {
  const same = before.map(({ items }) => items[place]!.parts[p]!);
  const own = version.items.flatMap(({ parts }) => parts).map(({ question }) => keyOf(question));
  const ofClass = plan.isClass ? same.filter(({ question }) => question.answers.length > 0).map(({ question }) => keyOf(question)) : [];
  return {
    version: v,
    random: random.within('item', place, p, v, ...(attempt > 0 ? [attempt] : [])),
    apartFrom: plan.isClass ? same.slice(-NEIGHBOURS) : same,
    taken: new Set([...plan.used, ...own, ...ofClass]),
    letters: lettersOf(version, random, v),
    earlier: version.items[place]!.parts,
  };
}

const kept = new WeakMap<Version, ReturnType<typeof letters>>();

function lettersOf(version: Version, random: Streams, v: number) {
  const found = kept.get(version) ?? letters(random.of('letters', v));
  kept.set(version, found);
  return found;
}

/** Keys of all questions of a paper, for the file of used ones. */
export const keysOf = (versions: readonly Version[]): string[] => [...new Set(versions.flatMap(({ items }) => items.flatMap(({ parts }) => parts.map(({ question }) => keyOf(question)))))];
