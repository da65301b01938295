import type { Mistake } from '../mistake.ts';
import type { Version } from './paper.ts';

/** Marks of a paper by topic, difficulty (1 to 3) and form; a question of two topics counts in both. */
export interface MarkTable {
  total: number;
  topics: Record<string, number>;
  levels: Record<string, number>;
  forms: Record<string, number>;
}

/** What a setter wants of it; what is left out is free. */
export type Demands = Partial<MarkTable>;

export function markTable({ questions }: Version): MarkTable {
  const table: MarkTable = { total: 0, topics: {}, levels: {}, forms: {} };
  const add = (part: Record<string, number>, name: string, marks: number) => (part[name] = (part[name] ?? 0) + marks);
  for (const { question, form, marks } of questions) {
    table.total += marks;
    for (const tag of question.direction.family.tags) add(table.topics, tag, marks);
    add(table.levels, String(question.difficulty.level), marks);
    add(table.forms, form, marks);
  }
  return table;
}

/** Every demand that a paper does not meet, with what it comes to. */
export function unmet(table: MarkTable, demands: Demands): Mistake[] {
  const total = demands.total === undefined || demands.total === table.total ? [] : [{ field: 'marks, total', what: `${demands.total} are asked, the questions come to ${table.total}` }];
  const parts = (['topics', 'levels', 'forms'] as const).flatMap((part) =>
    Object.entries(demands[part] ?? {}).flatMap(([name, wanted]) => {
      const has = table[part][name] ?? 0;
      return has === wanted ? [] : [{ field: `marks, ${part}, ${name}`, what: `${wanted} are asked, the questions come to ${has}` }];
    }),
  );
  return [...total, ...parts];
}
