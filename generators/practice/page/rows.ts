import { fill } from '../../quantities/spoken.ts';
import type { PracticeWords } from './data.ts';
import { all, onPress } from './elements.ts';

/** On a narrow screen a table shows one row at a time; the style hides the others, this chooses. */
export function rowByRow(words: Pick<PracticeWords, 'rowOf'>): void {
  for (const table of all<HTMLTableElement>('table.record')) {
    const rows = all<HTMLTableRowElement>('tbody tr', table);
    const turn = (to: number) => {
      const place = Math.max(0, Math.min(rows.length - 1, to));
      table.dataset['row'] = String(place);
      rows.forEach((row, i) => row.classList.toggle('current', i === place));
      for (const where of all('[data-row-of]', table.parentElement!)) where.textContent = fill(words.rowOf, { row: place + 1, all: rows.length });
    };
    rows.forEach((row, i) => row.addEventListener('row-wanted', () => turn(i)));
    turn(0);
  }
  const step = (by: number) => (button: HTMLElement) => {
    const table = button.closest('.block')!.querySelector<HTMLTableElement>('table.record')!;
    const rows = all('tbody tr', table);
    rows[Number(table.dataset['row']) + by]?.dispatchEvent(new CustomEvent('row-wanted'));
  };
  onPress('row-before', step(-1));
  onPress('row-next', step(1));
}
