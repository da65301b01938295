import type { Mistake } from '../mistake.ts';
import type { Entry } from './entry.ts';

/** What marks are asked for by; each question counts once in each. */
export const PARTS = ['topics', 'levels', 'forms'] as const;
export type PartName = (typeof PARTS)[number];

/** Marks of a paper by topic, difficulty (1 to 3) and form. */
export interface MarkTable extends Record<PartName, Record<string, number>> {
  total: number;
}

/** What a setter wants of it, to the mark; what is left out is free. */
export type Demands = Partial<MarkTable>;

/** The name that an entry counts under. */
export const nameIn = ({ topic, level, form }: Entry, part: PartName): string => (part === 'topics' ? topic : part === 'levels' ? level : form);

export function markTable(entries: readonly Entry[]): MarkTable {
  const table: MarkTable = { total: 0, topics: {}, levels: {}, forms: {} };
  for (const entry of entries) {
    table.total += entry.marks;
    for (const part of PARTS) {
      const name = nameIn(entry, part);
      table[part][name] = (table[part][name] ?? 0) + entry.marks;
    }
  }
  return table;
}

const sum = (marks: Record<string, number>) => Object.values(marks).reduce((all, one) => all + one, 0);

/** What the paper comes to in all: as asked, or what one part's marks add up to. */
export function totalOf(demands: Demands): number | undefined {
  return demands.total ?? PARTS.flatMap((part) => (demands[part] ? [sum(demands[part])] : []))[0];
}

/** Parts whose marks are more than there are, or disagree with each other. */
export function contradictions(demands: Demands): Mistake[] {
  const total = totalOf(demands);
  if (total === undefined) return [];
  const whole = demands.total === undefined ? `the marks of another part come to ${total}` : `total is ${total}`;
  return PARTS.flatMap((part) => {
    const all = sum(demands[part] ?? {});
    const fits = demands[part] === undefined || (demands.total === undefined ? all === total : all <= total);
    return fits ? [] : [{ field: `marks.${part}`, what: `they come to ${all}, but ${whole}; make them agree` }];
  });
}

/** Every demand that a paper does not meet, with what it comes to. */
export function unmet(table: MarkTable, demands: Demands): Mistake[] {
  const miss = (field: string, wanted: number | undefined, has: number) => (wanted === undefined || wanted === has ? [] : [{ field, what: `${wanted} are asked, the questions come to ${has}` }]);
  return [
    ...miss('marks.total', demands.total, table.total),
    ...PARTS.flatMap((part) => Object.entries(demands[part] ?? {}).flatMap(([name, wanted]) => miss(`marks.${part}.${name}`, wanted, table[part][name] ?? 0))),
  ];
}
