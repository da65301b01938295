import type { Random } from '../random.ts';
import { type Demands, type PartName, PARTS, nameIn, totalOf } from './demands.ts';
import type { Entry } from './entry.ts';
import { reaches } from './reach.ts';

/** Steps of one search, and searches with the questions in another order, before a demand counts as not to be met: many short ones find what a long one misses. */
const STEPS = 400;
const SEARCHES = 45;

/** A question with the places of the sums that it adds to. */
interface Candidate {
  entry: Entry;
  sums: readonly number[];
  /** The same for all that add the same marks to the same sums. */
  kind: string;
}

/**
 * Questions that make up the marks asked for exactly, besides those that are `set` already: each question once, families
 * that are not in the paper yet first. Nothing where none do, as far as a search tells.
 */
export function choose(pool: readonly Entry[], demands: Demands, set: readonly Entry[], random: Random): Entry[] | undefined {
  const total = totalOf(demands) ?? 0;
  const sums = sumsOf(demands, total);
  const rest = sums.map(({ marks }) => marks);
  for (const entry of set) for (const place of placesOf(entry, sums)) rest[place]! -= entry.marks;
  if (rest.some((marks) => marks < 0)) return undefined;
  const taken = new Set(set.map(({ question }) => question));
  const open = pool.filter(({ question }) => !taken.has(question)).map((entry) => candidate(entry, sums));
  for (let i = 0; i < SEARCHES; i++) {
    const found = search(rest, random.shuffle(open.filter(({ sums: places }) => places.length === PARTS.length)), set);
    if (found) return found;
  }
  return undefined;
}

function candidate(entry: Entry, sums: readonly Sum[]): Candidate {
  const places = placesOf(entry, sums);
  return { entry, sums: places, kind: `${places.join(' ')}, ${entry.marks}` };
}

/** A sum that marks are asked for: of one name of a part, or of all names that the part leaves free. */
interface Sum {
  part: PartName;
  name?: string;
  marks: number;
}

function sumsOf(demands: Demands, total: number): Sum[] {
  return PARTS.flatMap((part): Sum[] => {
    const named = Object.entries(demands[part] ?? {}).map(([name, marks]) => ({ part, name, marks }));
    return [...named, { part, marks: total - named.reduce((sum, { marks }) => sum + marks, 0) }];
  });
}

function placesOf(entry: Entry, sums: readonly Sum[]): number[] {
  return PARTS.map((part) => {
    const name = nameIn(entry, part);
    const named = sums.findIndex((sum) => sum.part === part && sum.name === name);
    return named >= 0 ? named : sums.findIndex((sum) => sum.part === part && sum.name === undefined);
  });
}

function search(rest: readonly number[], all: readonly Candidate[], set: readonly Entry[]): Entry[] | undefined {
  let steps = STEPS;
  const uses = new Map<string, number>();
  const use = ({ parts }: Entry, by: number) => parts.forEach(({ family }) => uses.set(family.id, (uses.get(family.id) ?? 0) + by));
  const used = ({ parts }: Entry) => Math.max(...parts.map(({ family }) => uses.get(family.id) ?? 0));
  for (const entry of set) use(entry, 1);
  return from(rest, all);

  function from(left: readonly number[], before: readonly Candidate[]): Entry[] | undefined {
    if (left.every((marks) => marks === 0)) return [];
    if (--steps < 0) return undefined;
    let open = before.filter(({ entry, sums }) => sums.every((place) => entry.marks <= left[place]!));
    const tightest = tightestSum(left, open);
    if (tightest === undefined) return undefined;
    const inIt = open.filter(({ sums }) => sums.includes(tightest)).map((one) => ({ one, uses: used(one.entry) })).sort((a, b) => a.uses - b.uses);
    for (const { one } of inIt) {
      if (!open.includes(one)) continue;
      const next = [...left];
      for (const place of one.sums) next[place]! -= one.entry.marks;
      use(one.entry, 1);
      const found = from(next, open.filter(({ entry }) => entry.question !== one.entry.question));
      if (found) return [one.entry, ...found];
      use(one.entry, -1);
      // Others that add the same to the same sums would do no better, but for the rare one that shuts out no other form of itself.
      open = open.filter((other) => other.kind !== one.kind);
    }
    return undefined;
  }
}

/** The sum that the fewest questions can add to; nothing where one of them cannot be made up. */
function tightestSum(left: readonly number[], open: readonly Candidate[]): number | undefined {
  const counts = left.map((): number[] => []);
  const number = left.map(() => 0);
  for (const { entry, sums } of open) {
    for (const place of sums) {
      counts[place]![entry.marks] = (counts[place]![entry.marks] ?? 0) + 1;
      number[place]!++;
    }
  }
  let tightest: number | undefined;
  for (const [place, marks] of left.entries()) {
    if (marks === 0) continue;
    if (!reaches(marks, counts[place]!)) return undefined;
    if (tightest === undefined || number[place]! < number[tightest]!) tightest = place;
  }
  return tightest;
}
