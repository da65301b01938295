import { unitLine } from '../../sheets/record.ts';
import { formulaHtml } from '../fillings.ts';
import { judgeInstead, mistakesAt } from '../finished-record.ts';
import type { Place } from '../places.ts';
import { remarkOn } from '../remarks.ts';
import type { FaultsData } from './data.ts';
import { make } from './elements.ts';
import type { RecordNotebook } from './faults.ts';
import { makeField } from './field.ts';
import { labelOf, writeDown } from './notebook.ts';
import { markOf, setMark, titleOf } from './said.ts';

/** The mistake that the student names at a place is kept among the values under this and the place. */
const NAMED = 'named:';

/** A mistake that was found: which one it is, under any name that fits, and what should stand there. */
export function foundLine(notebook: RecordNotebook, place: Place, names: readonly string[], data: FaultsData): HTMLElement {
  const legend = make('legend', {}, titleOf(notebook, place, data.words));
  return make('fieldset', { class: 'found' }, legend, naming(notebook, place, names, data), ...instead(notebook, place, data));
}

function naming(notebook: RecordNotebook, { id, key }: Place, names: readonly string[], { words: { faults, mistakes, practice } }: FaultsData): HTMLElement {
  const mark = make('span', { class: 'mark', role: 'status' });
  const select = make('select', {}, ...['', ...mistakesAt(notebook.steps, id)].map((value) => make('option', { value }, mistakes[value] ?? '')));
  const show = () => {
    const isWrong = select.value !== '' && !names.includes(select.value);
    setMark(mark, select.value === '' ? '' : isWrong ? practice.again : practice.right, isWrong);
  };
  select.value = notebook.texts[NAMED + key] ?? '';
  select.addEventListener('change', () => {
    writeDown(notebook, NAMED + key, select.value);
    show();
  });
  show();
  return make('p', {}, make('label', {}, faults.what, ' ', select), ' ', mark);
}

/** The field for the value that should stand there, and what is said of it. */
function instead(notebook: RecordNotebook, place: Place, { signed, scientific, words }: FaultsData): HTMLElement[] {
  const { sheet, steps, places, texts } = notebook;
  const { id, key } = place;
  const fieldId = `field-${key.replace(':', '-')}`;
  const holder = make('span', { class: 'place' });
  const field = makeField(holder, { id: fieldId, label: `${labelOf(key)}: ${words.faults.instead}`, signed: signed.includes(id), scientific: scientific.includes(id) }, words.practice);
  const mark = make('span', { class: 'mark', id: `${fieldId}-mark` });
  const unit = make('span', { class: 'unit' });
  unit.innerHTML = formulaHtml(unitLine(place.unit, words.spoken));
  const remark = make('p', { class: 'said', role: 'status' });
  const show = () => {
    const answer = judgeInstead(sheet, steps, places, texts, place);
    setMark(mark, markOf(answer, words.practice), answer.is === 'wrong');
    remark.textContent = remarkOn(answer, place, { depth: 0, hints: 0 }, words).says;
  };
  holder.addEventListener('change', () => {
    writeDown(notebook, key, field.text());
    show();
  });
  field.write(texts[key] ?? '');
  show();
  return [make('p', {}, words.faults.instead, ' ', holder, ' ', unit, ' ', mark), remark];
}
