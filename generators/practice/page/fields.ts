import type { Place } from '../places.ts';
import type { PageData } from './data.ts';
import { all, make } from './elements.ts';
import { makeField } from './field.ts';
import { type Notebook, holderOf, labelOf, takeDown } from './notebook.ts';
import { say, showMarks } from './said.ts';

/** How the values of a page are written, and what is said of them. */
type Manner = Pick<PageData, 'signed' | 'scientific' | 'words'>;

/** Puts a field into every place of the page, with what was written there before. */
export function putFields(notebook: Notebook, data: Manner): void {
  for (const place of notebook.places) putField(notebook, place, data);
  for (const said of all('[data-said]')) said.replaceChildren();
  showMarks(notebook, data.words.practice);
}

function putField(notebook: Notebook, place: Place, { signed, scientific, words }: Manner): void {
  const { key } = place;
  const holder = holderOf(key)!;
  const id = `field-${key.replace(':', '-')}`;
  const field = makeField(holder, { id, label: labelOf(key), signed: signed.includes(place.id), scientific: scientific.includes(place.id) }, words.practice);
  holder.append(make('span', { class: 'mark', id: `${id}-mark` }));
  field.write(notebook.texts[key] ?? '');
  notebook.fields.set(key, field);
  const changed = () => {
    takeDown(notebook, key);
    showMarks(notebook, words.practice);
    say(notebook, place, words);
  };
  for (const input of [...field.inputs, ...all('button.sign', holder)]) input.addEventListener('change', changed);
  for (const input of field.inputs) {
    // What was said of the place before stays while the student is still to write in this one.
    input.addEventListener('focus', () => notebook.known.get(key)!.is !== 'empty' && say(notebook, place, words));
    input.addEventListener('keydown', (event) => event.key === 'Enter' && goOn(notebook, key, input));
  }
}

/** Enter checks a value and goes on, if it is right, to the next place on the page that is not. */
function goOn(notebook: Notebook, key: string, input: HTMLInputElement): void {
  input.blur();
  // Leaving the place has judged all anew.
  const { fields, known } = notebook;
  const onPage = all('[data-place]').map((holder) => holder.dataset['place']!);
  const next = onPage.slice(onPage.indexOf(key) + 1).find((other) => fields.has(other) && !holderOf(other)!.closest('[hidden]') && known.get(other)!.is !== 'right');
  const to = known.get(key)!.is === 'right' && next !== undefined ? fields.get(next)!.inputs[0]! : input;
  to.closest('tr')?.dispatchEvent(new CustomEvent('row-wanted'));
  to.focus();
}
