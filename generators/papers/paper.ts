import { UserMistake } from '../mistake.ts';
import type { Random, Streams } from '../random.ts';
import { choose } from './choose.ts';
import { type Demands, PARTS, nameIn, totalOf } from './demands.ts';
import type { Entry } from './entry.ts';
import { fill } from './fill.ts';
import { FORMS } from './forms.ts';
import { type Made, keyOf } from './item.ts';
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
const TRIES = 20;

/**
 * All versions of a paper: the same questions and forms in each, with other numbers. UserMistake where a demand cannot be
 * met or a question that is named cannot be had in so many versions.
 */
export function makePaper(plan: PaperPlan, random: Streams): Version[] {
  const versions: Version[] = plan.whose.map((one) => ({ ...one, items: [] }));
  const failed: Entry[] = [];
  for (let i = 0; i < TRIES; i++) {
    const entries = i === 0 ? selection(plan, random) : selectionAgain(plan, versions, failed, random.of('choose', i));
    const standing = entriesOf(versions);
    // Cases first: what they ask in words is fixed, and others make way.
    const open = entries.filter((entry) => !standing.includes(entry)).sort((a, b) => Number(b.form === 'case') - Number(a.form === 'case'));
    const missing = open.filter((entry) => !fill(versions, entry, plan, random));
    if (missing.length === 0) return versions.map((version) => ({ ...version, items: inOrder(version.items, entries) }));
    failed.push(...missing);
  }
  throw new UserMistake([{ field: plan.used.size > 0 ? 'used' : 'versions', what: `too few questions are left: ${gaveOut(failed, plan)}; ask for fewer versions or fewer marks, give each candidate of a class list a paper, or start another file of used questions` }]);
}

const entriesOf = ([first]: readonly Version[]): Entry[] => first!.items.map(({ entry }) => entry);

const inOrder = (items: Version['items'], entries: readonly Entry[]) => entries.map((entry) => items.find((item) => item.entry === entry)!);

/** The questions of a paper: those that are named, and those chosen to its demands, in the order of their forms. */
export function selection({ set, pool, demands }: Pick<PaperPlan, 'set' | 'pool' | 'demands'>, random: Streams): readonly Entry[] {
  return totalOf(demands) === undefined ? set : together(set, chosen(pool, demands, set, random.of('choose', 0)));
}

function together(set: readonly Entry[], others: readonly Entry[]): readonly Entry[] {
  const rank = ({ form, level }: Entry) => 10 * FORMS.indexOf(form) + Number(level);
  return others.length === 0 ? set : [...set, ...others].sort((a, b) => rank(a) - rank(b));
}

/** Others in place of those that could not be had; where none go with the rest, all are chosen anew. */
function selectionAgain(plan: PaperPlan, versions: readonly Version[], failed: readonly Entry[], random: Random): readonly Entry[] {
  const { set, demands } = plan;
  const pool = plan.pool.filter(({ question }) => failed.every((one) => one.question !== question));
  const standing = entriesOf(versions);
  const others = choose(pool, demands, standing, random);
  if (others) return together(set, [...standing.filter((entry) => !set.includes(entry)), ...others]);
  for (const version of versions) version.items = version.items.filter(({ entry }) => set.includes(entry));
  try {
    return together(set, chosen(pool, demands, set, random));
  } catch (error) {
    if (!(error instanceof UserMistake)) throw error;
    throw new UserMistake(error.mistakes.map((mistake) => ({ ...mistake, what: `${mistake.what} (${gaveOut(failed, plan, mistake.field)})` })));
  }
}

/** So many names are told; who reads more reads none. */
const TOLD = 6;

/** Which questions could not be had, those first that would count in the demand of this field. */
function gaveOut(failed: readonly Entry[], { whose, used }: PaperPlan, field?: string): string {
  const counts = (entry: Entry) => PARTS.some((part) => field === `marks.${part}.${nameIn(entry, part)}`);
  const names = [...new Set([...failed.filter(counts), ...failed].map(({ question }) => question))];
  const more = names.length > TOLD ? ` and ${names.length - TOLD} more` : '';
  return `without ${names.slice(0, TOLD).join(', ')}${more}, which cannot be had ${whose.length} times with answers that differ${used.size > 0 ? ' and were not asked before' : ''}`;
}

/** Keys of all questions of a paper, for the file of used ones. */
export const keysOf = (versions: readonly Version[]): string[] => [...new Set(versions.flatMap(({ items }) => items.flatMap(({ parts }) => parts.map(({ question }) => keyOf(question)))))];
