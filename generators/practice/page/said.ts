import { fill } from '../../quantities/spoken.ts';
import { type Line, symbolLine } from '../../quantities/working.ts';
import { type Answer, figuresBefore, workingLines } from '../check.ts';
import { formulaHtml } from '../fillings.ts';
import type { Place } from '../places.ts';
import { remarkOn } from '../remarks.ts';
import type { PageData, PracticeWords } from './data.ts';
import { all, make } from './elements.ts';
import { type Notebook, type Working, helpAt, holderOf, labelOf } from './notebook.ts';

/** The word beside each place, and how many are right. */
export function showMarks({ known, places }: Notebook, words: PracticeWords): void {
  for (const { key } of places) {
    const answer = known.get(key)!;
    const mark = holderOf(key)!.querySelector<HTMLElement>('.mark');
    if (mark) setMark(mark, markOf(answer, words), answer.is === 'wrong');
  }
  const counted = places.filter(({ optional }) => !optional);
  const right = counted.filter(({ key }) => known.get(key)!.is === 'right').length;
  const progress = right === 0 ? words.start : fill(right === counted.length ? words.done : words.progress, { right, all: counted.length });
  for (const element of all('[data-progress]')) element.textContent = progress;
}

/** Puts the word beside a place; one that asks for another look stands out. */
export function setMark(mark: HTMLElement, text: string, isWrong: boolean): void {
  mark.textContent = text;
  mark.classList.toggle('again', isWrong);
}

/** The word beside a place. */
export function markOf(answer: Answer, words: PracticeWords): string {
  switch (answer.is) {
    case 'empty':
      return '';
    case 'unreadable':
      return words.unread;
    case 'right':
      return answer.byTheKey || answer.extraFigures !== 0 || answer.wrongUnit ? words.rightByKey : words.right;
    case 'wrong':
      return words.again;
  }
}

/** Says what is to be said of a place, below its part of the record. */
export function say(notebook: Notebook, place: Place, words: PageData['words']): void {
  const said = saidFor(place.key);
  if (!said) return;
  const answer = notebook.known.get(place.key)!;
  if (answer.is === 'empty') return said.replaceChildren();
  const help = helpAt(notebook, place.key);
  deepen(help, answer, notebook.texts[place.key] ?? '');
  const { lines, hints, look } = (notebook.working ?? ownWorking)(place, notebook, words);
  const remark = remarkOn(answer, place, { depth: help.depth, hints, ...(look !== undefined && { look }) }, words);
  const shown = Math.min(lines.length, Math.max(remark.lines, help.opened));
  const next = () => {
    help.opened = shown + 1;
    say(notebook, place, words);
    saidFor(place.key)?.querySelector<HTMLElement>('button, .all-open')?.focus();
  };
  said.replaceChildren(make('p', {}, make('b', {}, titleOf(notebook, place, words), ': '), remark.says), linesOf(lines.slice(0, shown)), ...(lines.length === 0 ? [] : [opener(shown < lines.length, next, words.practice)]));
}

/** What a place is called, its symbol set as a formula where its label begins with it in words. */
export function titleOf({ steps }: Pick<Notebook, 'steps'>, { id, key }: Place, { spoken }: PageData['words']): HTMLElement {
  const label = labelOf(key);
  const symbol = symbolLine(steps, id, spoken);
  const title = make('span', {}, label);
  if (!label.startsWith(symbol.spoken)) return title;
  title.innerHTML = formulaHtml(symbol);
  title.append(label.slice(symbol.spoken.length));
  return title;
}

/** The working of a place alone, on the student's own figures before it. */
function ownWorking(place: Place, { sheet, steps, places, texts }: Notebook, { spoken }: PageData['words']): Working {
  const lines = workingLines(sheet, steps, place, figuresBefore(places, texts, place.key), spoken);
  return { lines, hints: lines.length - 1 };
}

const saidFor = (key: string) => holderOf(key)?.closest('.block')?.querySelector<HTMLElement>('[data-said]');

/** Another wrong value that no slip explains takes the hints a step deeper. */
function deepen(help: { answered: string; depth: number }, answer: Answer, text: string): void {
  if (answer.is !== 'wrong' || answer.explanations.length > 0 || help.answered === text) return;
  help.depth++;
  help.answered = text;
}

function linesOf(lines: readonly Line[]): HTMLElement {
  const list = make('div', { class: 'lines' });
  list.innerHTML = lines.map((line) => `<p>${formulaHtml(line)}</p>`).join('');
  return list;
}

function opener(more: boolean, next: () => void, words: PracticeWords): HTMLElement {
  if (!more) return make('p', { class: 'all-open', tabindex: '-1' }, words.allWorking);
  const button = make('button', { type: 'button' }, words.moreWorking);
  button.addEventListener('click', next);
  return button;
}
