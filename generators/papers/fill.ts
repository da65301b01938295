import { UserMistake } from '../mistake.ts';
import type { Streams } from '../random.ts';
import type { Direction } from '../questions/direction.ts';
import type { Entry } from './entry.ts';
import { Exhausted, type Made, type Making, keyOf, make, turns } from './item.ts';
import { letters } from './letters.ts';
import type { PaperPlan, Version } from './paper.ts';

/** Candidates in a list who may sit near each other. */
const NEIGHBOURS = 4;

/** A case whose later parts do not come out with the numbers of its first is begun again so often. */
const BEGUN = 60;

/** Arrangements of a question that are tried before it is given up: some have few numbers to offer. */
const ARRANGED = 4;

/** Puts an entry last into every version; into none, and no, where it cannot be had so often, which a named one must not be. */
export function fill(versions: readonly Version[], entry: Entry, plan: PaperPlan, random: Streams): boolean {
  const own = random.within('item', versions[0]!.items.length, entry.question);
  const most = Math.max(...entry.parts.map(({ choices }) => choices.length));
  let why: Exhausted | undefined;
  for (let turn = 0; turn < Math.min(ARRANGED, most); turn++) {
    why = fillArranged(versions, entry, turn, plan, own);
    if (why === undefined) return true;
  }
  const named = plan.set.indexOf(entry);
  if (named < 0) return false;
  throw new UserMistake([{ field: `questions ${named + 1}`, what: `${entry.question}: ${why!.message}; ask for fewer versions, another direction or another form` }]);
}

/** The same in one arrangement; why not, where it cannot be had. */
function fillArranged(versions: readonly Version[], entry: Entry, turn: number, plan: PaperPlan, own: Streams): Exhausted | undefined {
  const place = versions[0]!.items.length;
  const stand = entry.parts.map((part, p) => turns(part, own.of('turn', p), turn));
  try {
    versions.forEach((version, v) => {
      for (let attempt = 0; !fillOne(version, entry, stand, { place, v, attempt, before: versions.slice(0, v) }, plan, own); attempt++);
    });
    return undefined;
  } catch (error) {
    if (!(error instanceof Exhausted)) throw error;
    for (const { items } of versions) items.length = place;
    return error;
  }
}

interface Where {
  place: number;
  /** The place of the version among all, and those before it. */
  v: number;
  before: readonly Version[];
  /** Counted from 0. */
  attempt: number;
}

/** Puts an entry into one version; no where another attempt may. @throws Exhausted */
function fillOne(version: Version, entry: Entry, stand: readonly (readonly Direction[])[], where: Where, plan: PaperPlan, own: Streams): boolean {
  const item = { entry, parts: [] as Made[] };
  version.items[where.place] = item;
  for (const [p, part] of entry.parts.entries()) {
    try {
      item.parts.push(make(part, stand[p]!, making(version, p, where, plan, own)));
    } catch (error) {
      if (error instanceof Exhausted && p > 0 && where.attempt < BEGUN) return false;
      throw error;
    }
  }
  return true;
}

function making(version: Version, p: number, { place, v, before, attempt }: Where, plan: PaperPlan, own: Streams): Making {
  const same = before.map(({ items }) => items[place]!.parts[p]!);
  const parts = version.items.flatMap((item) => item.parts);
  const ofClass = plan.isClass ? same.filter(({ question }) => question.answers.length > 0) : [];
  const streams = own.within(p, v, ...(attempt > 0 ? [attempt] : []));
  return {
    version: v,
    random: streams,
    apartFrom: plan.isClass ? same.slice(-NEIGHBOURS) : same,
    taken: new Set([...plan.used, ...[...parts, ...ofClass].map(({ question }) => keyOf(question))]),
    letters: letters(parts.flatMap(({ options }) => (options ? [options] : [])), streams.of('letters')),
    earlier: version.items[place]!.parts,
  };
}
