import type { PracticePage } from './practice-page.ts';

/** The words of the page of experiments: the groups, with what is in each, and the heading of what is in none. */
export interface ChoiceWords {
  groups: readonly { title: string; of: readonly string[] }[];
  others: string;
}

/** Pages of experiments by what they are for, in the order of the words; one that no group names comes last, so that a new one is never lost. */
export function groupsOf<Page extends PracticePage>(pages: readonly Page[], { groups, others }: ChoiceWords): { title: string; pages: Page[] }[] {
  const named = new Set(groups.flatMap(({ of }) => of));
  const found = groups.map(({ title, of }) => ({ title, pages: of.flatMap((id) => pages.filter(({ experiment }) => experiment.id === id)) }));
  return [...found, { title: others, pages: pages.filter(({ experiment }) => !named.has(experiment.id)) }].filter((group) => group.pages.length > 0);
}
