import { type Mistake, UserMistake } from '../mistake.ts';
import type { Random } from '../random.ts';
import { choose } from './choose.ts';
import { type Demands, PARTS, type PartName, contradictions, markTable, nameIn, totalOf } from './demands.ts';
import type { Entry } from './entry.ts';
import { reachable } from './reach.ts';

/** The questions of a paper, chosen to its demands; UserMistake that says which part cannot be met, and why. */
export function chosen(pool: readonly Entry[], demands: Demands, set: readonly Entry[], random: Random): Entry[] {
  const plain = contradictions(demands);
  if (plain.length > 0) throw new UserMistake(plain);
  const found = choose(pool, demands, set, random);
  if (found) return found;
  const alone = wanted(demands).flatMap((demand) => aloneImpossible(demand, pool, set));
  throw new UserMistake(alone.length > 0 ? alone : [together(pool, demands, set, random)]);
}

interface Demand {
  field: string;
  marks: number;
  counts: (entry: Entry) => boolean;
}

/** Every single demand: the total, and each name of each part. */
function wanted(demands: Demands): Demand[] {
  const total = totalOf(demands);
  const named = PARTS.flatMap((part) => Object.entries(demands[part] ?? {}).map(([name, marks]): Demand => ({ field: `marks.${part}.${name}`, marks, counts: (entry) => nameIn(entry, part) === name })));
  return [...(total === undefined ? [] : [{ field: 'marks.total', marks: total, counts: () => true }]), ...named];
}

/** What the questions that are set come to already is too much, or no questions add up to the rest. */
function aloneImpossible({ field, marks, counts }: Demand, pool: readonly Entry[], set: readonly Entry[]): Mistake[] {
  const already = set.filter(counts).reduce((sum, entry) => sum + entry.marks, 0);
  if (already > marks) return [{ field, what: `${marks} are asked, but the questions that the paper names come to ${already}` }];
  const taken = new Set(set.map(({ question }) => question));
  const each = new Map<string, number>();
  for (const entry of pool) if (counts(entry) && !taken.has(entry.question)) each.set(entry.question, Math.max(each.get(entry.question) ?? 0, entry.marks));
  const most = already + [...each.values()].reduce((sum, one) => sum + one, 0);
  if (most < marks) return [{ field, what: `${marks} are asked, and all its questions together come to ${most}` }];
  const inMarks: number[] = [];
  for (const entry of pool) if (counts(entry) && !taken.has(entry.question)) inMarks[entry.marks] = (inMarks[entry.marks] ?? 0) + 1;
  const can = reachable(marks - already + LARGEST, inMarks);
  if (can[marks - already] === 1) return [];
  const near = [...can.keys()].filter((sum) => can[sum] === 1).map((sum) => sum + already).sort((a, b) => Math.abs(a - marks) - Math.abs(b - marks)).slice(0, 2);
  return [{ field, what: `${marks} are asked, and its questions cannot add up to that; ask for ${near.join(' or ')}` }];
}

/** No question carries more marks than this beyond what was asked for. */
const LARGEST = 20;

/** Each demand can be met alone, not all together: the first without which the others can. */
function together(pool: readonly Entry[], demands: Demands, set: readonly Entry[], random: Random): Mistake {
  const total = totalOf(demands)!;
  for (const part of PARTS) {
    for (const name of Object.keys(demands[part] ?? {})) {
      const found = choose(pool, { ...without(demands, part, name), total }, set, random);
      if (!found) continue;
      const has = markTable([...set, ...found])[part][name] ?? 0;
      return { field: `marks.${part}.${name}`, what: `${demands[part]![name]} are asked, which does not go with the other demands; they can be met with ${has}` };
    }
  }
  const parts = PARTS.filter((part) => demands[part]).map((part) => `marks.${part}`);
  return { field: parts.join(', '), what: `no questions meet these together, and leaving out one of them is not enough; ask for less of ${parts.length > 1 ? 'two of them' : 'it'} to the mark, or for another total` };
}

function without(demands: Demands, part: PartName, name: string): Demands {
  return { ...demands, [part]: Object.fromEntries(Object.entries(demands[part]!).filter(([other]) => other !== name)) };
}
