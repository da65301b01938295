import type { Wish } from '../questions/make-question.ts';
import { all } from './elements.ts';

/** Lists from which the student picks what is asked and in which arrangement; left open, the set chooses. */
export function startPicker(current: () => Wish, pick: (wish: Wish) => void): void {
  const lists = all<HTMLSelectElement>('select[data-wish]');
  const show = () => {
    const { ask, choice } = current();
    for (const list of lists) list.value = (list.dataset['wish'] === 'ask' ? ask : choice[list.dataset['wish']!]) ?? '';
  };
  for (const list of lists) {
    list.addEventListener('change', () => {
      const picked = lists.filter(({ value }) => value !== '').map(({ dataset, value }): [string, string] => [dataset['wish']!, value]);
      const { ask, ...choice } = Object.fromEntries(picked);
      pick({ choice, ...(ask !== undefined && { ask }) });
    });
  }
  addEventListener('hashchange', show);
  show();
}
