import { workOut } from '../../sheets/worked.ts';
import { figuresBefore } from '../check.ts';
import type { PracticeWords } from './data.ts';
import { all } from './elements.ts';
import { type Notebook, writeDown } from './notebook.ts';
import { setMark } from './said.ts';

/** A choice is kept among the values under this and its place. */
const PREFIX = 'choice:';

type Control = HTMLSelectElement | HTMLInputElement;

/** Choices that the student makes: what a result says, or what is wrong with a circuit. Each is judged on the student's own figures. */
export function startChoices(current: () => Notebook, words: PracticeWords): () => void {
  const holders = all('[data-verdict]');
  const controls = (holder: HTMLElement) => all<Control>('select, input', holder);
  const keyOf = (holder: HTMLElement) => PREFIX + holder.dataset['verdict']!;
  const show = () => holders.forEach((holder) => mark(holder, current(), words));
  for (const holder of holders) {
    for (const control of controls(holder)) {
      control.addEventListener('change', () => {
        writeDown(current(), keyOf(holder), control.value);
        mark(holder, current(), words);
      });
    }
  }
  return () => {
    for (const holder of holders) {
      const chosen = current().texts[keyOf(holder)] ?? '';
      for (const control of controls(holder)) {
        if (control instanceof HTMLSelectElement) control.value = chosen;
        else control.checked = control.value === chosen;
      }
    }
    show();
  };
}

function mark(holder: HTMLElement, { sheet, steps, places, texts }: Notebook, words: PracticeWords): void {
  const [id, row] = holder.dataset['verdict']!.split(':') as [string, string];
  const chosen = texts[`${PREFIX}${id}:${row}`] ?? '';
  const right = () => workOut(sheet, steps, figuresBefore(places, texts, '')).verdicts()[id]![Number(row)];
  const isWrong = chosen !== '' && chosen !== right();
  setMark(holder.querySelector<HTMLElement>('.mark')!, chosen === '' ? '' : isWrong ? words.again : words.right, isWrong);
  for (const hint of all('[data-hint]', holder)) hint.textContent = isWrong ? hint.dataset['hint']! : '';
}
