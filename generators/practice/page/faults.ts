import { type FinishedSheet, judgedAs, mistakesIn, writtenIn } from '../finished-record.ts';
import { provideFormulas } from '../formula.ts';
import type { Place } from '../places.ts';
import { recordSlots } from '../record-slots.ts';
import type { FaultsData } from './data.ts';
import { all, make } from './elements.ts';
import { foundLine } from './found.ts';
import { type Notebook, type SetNotebook, codeOfPage, holderOf, labelOf, openSet, writeDown } from './notebook.ts';
import { rowByRow } from './rows.ts';
import { say, showMarks } from './said.ts';
import { setTools } from './tools.ts';

/** What the student says of a place is kept among the values under this and the place. */
const SAID = 'said:';

/** A set whose record came filled in. */
export type RecordNotebook = SetNotebook & { sheet: FinishedSheet };

/** Brings a page to life on which a finished record is judged: what follows, what is a mistake, which one, and what should stand there. */
export function startFaults(data: FaultsData): void {
  provideFormulas(data.formulas);
  let notebook: RecordNotebook;
  const open = () => {
    notebook = openSet(data, codeOfPage()) as RecordNotebook;
    const { sheet, steps } = notebook;
    const slots = recordSlots(sheet, steps, data.experiment.layout, data.words.spoken, data.words.mistakes);
    for (const [name, html] of Object.entries(slots)) for (const slot of all(`[data-slot="${name}"]`)) slot.innerHTML = html;
    putRecord(notebook, data);
  };
  addEventListener('hashchange', open);
  rowByRow(data.words.practice);
  open();
  setTools(() => notebook, data.words.practice, () => putRecord(notebook, data));
}

/** Puts what the student says of each value beside it, and below each part of the record the mistakes that were found in it. */
function putRecord(notebook: RecordNotebook, data: FaultsData): void {
  const { sheet, steps, places, texts } = notebook;
  const mistakes = mistakesIn(sheet, steps, places);
  const asItStands: Notebook = { ...notebook, texts: writtenIn(sheet.finished, places) };
  const show = () => {
    asItStands.known = new Map(places.map(({ key }) => [key, judgedAs(texts[SAID + key] ?? '', mistakes.has(key))]));
    showMarks(asItStands, data.words.practice);
    const isFound = ({ key }: Place) => mistakes.has(key) && texts[SAID + key] === 'mistake';
    for (const list of all('[data-found]')) {
      const block = list.closest('.block')!;
      list.replaceChildren(...places.filter((place) => isFound(place) && block.contains(holderOf(place.key))).map((place) => foundLine(notebook, place, mistakes.get(place.key)!, data)));
    }
  };
  for (const place of places) {
    putChoice(place, texts[SAID + place.key] ?? '', data, (said) => {
      writeDown(notebook, SAID + place.key, said);
      show();
      say(asItStands, place, data.words);
    });
  }
  for (const said of all('[data-said]')) said.replaceChildren();
  show();
}

function putChoice({ key }: Place, chosen: string, { words: { faults } }: FaultsData, take: (said: string) => void): void {
  const holder = holderOf(key)!;
  const mark = make('span', { class: 'mark', id: `said-${key.replace(':', '-')}` });
  const select = make('select', { 'aria-label': labelOf(key), 'aria-describedby': mark.id }, ...(['', 'follows', 'mistake'] as const).map((value) => make('option', { value }, value && faults[value])));
  select.value = chosen;
  select.addEventListener('change', () => take(select.value));
  holder.replaceChildren(select, mark);
}
