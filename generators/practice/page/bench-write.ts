import type { Experiment } from '../../experiments/experiment.ts';
import type { Shows } from '../../experiments/on-bench.ts';
import type { Reading } from '../../quantities/step.ts';
import { fill } from '../../quantities/spoken.ts';
import { type Target, asShown, isOutside, keyIn, targets } from '../set-bench.ts';
import { mathmlOf } from '../tex.ts';
import { type Stand, oneIn } from './bench-stand.ts';
import { make } from './elements.ts';
import type { Texts } from './kept.ts';
import type { SetNotebook } from './notebook.ts';

interface Entry {
  id: string;
  by: Shows;
  input: HTMLInputElement;
}

/** Where the student writes down what the instruments show, row by row of the tables that are for what is in the gaps. Gives what offers them anew. */
export function writing(stand: Stand, experiment: Experiment, notebook: () => SetNotebook, take: (own: Texts) => void): () => void {
  const one = oneIn(stand.root);
  const [rows, fields, row] = [one('[data-write]'), one('[data-write-fields]'), one<HTMLSelectElement>('[data-write-row]')];
  let open: Target[] = [];
  let entries: Entry[] = [];
  const offerFields = () => {
    const { reads } = open[Number(row.value)]!.taken;
    entries = Object.entries(reads).map(([id, by]) => ({ id, by, input: make('input', { type: 'text', inputmode: 'decimal', autocomplete: 'off', size: '5', 'aria-label': stand.words.reads[by] }) }));
    fields.replaceChildren(...entries.map((entry) => field(entry, notebook())));
  };
  row.addEventListener('change', offerFields);
  one('[data-do="bench-write"]').addEventListener('click', () => {
    const target = open[Number(row.value)]!;
    const written = entries.map(({ id, by, input }) => ({ id, by, text: asShown(stand.bench, stand.setting, by, input.value) }));
    const misread = entries[written.findIndex(({ text }) => text === undefined)];
    if (misread) {
      stand.say(fill(stand.words.misread, { what: stand.words.reads[misread.by] }));
      return misread.input.focus();
    }
    const own = Object.fromEntries(written.map(({ id, text }) => [keyIn(notebook().steps, id, target.row), text!]));
    const before = notebook();
    take(own);
    stand.say(remarks(stand, experiment, before, target, own));
    for (const { input } of entries) input.value = '';
  });
  return () => {
    open = targets(stand.bench, stand.setting, notebook().steps, notebook().printed);
    rows.hidden = open.length === 0;
    one('[data-no-table]').hidden = open.length > 0;
    if (open.length === 0) return;
    const tables = new Set(open.map(({ table }) => table));
    row.replaceChildren(...open.map((target, i) => make('option', { value: String(i) }, `${fill(stand.words.row, { row: target.row + 1 })}${tables.size > 1 ? `, ${captionOf(target)}` : ''}`)));
    offerFields();
  };
}

function field({ id, input }: Entry, { steps }: SetNotebook): HTMLElement {
  const { tex, unit } = steps.step(id) as Reading;
  const symbol = make('span', { 'aria-hidden': 'true' });
  symbol.innerHTML = mathmlOf(tex);
  return make('label', {}, symbol, ' ', input, ` ${unit}`);
}

/** What the table of a row is called on the page. */
function captionOf({ taken, row }: Target): string {
  const [id] = Object.keys(taken.reads);
  return document.querySelector(`[data-slot="read:${id}:${row}"]`)?.closest('table')?.caption?.textContent ?? '';
}

/** What is to be said of readings that were written down. */
function remarks({ setting, words }: Stand, experiment: Experiment, before: SetNotebook, { taken, row }: Target, own: Texts): string {
  const { ask } = before.printed;
  const scale = Object.keys(taken.reads).find((id) => taken.reads[id] === 'scale')!;
  const l = own[keyIn(before.steps, scale, row)]!;
  const [low, high] = ask.window;
  // A box that is read for other null points too has been changed since they were found.
  const changed = Object.entries(own).some(([key, text]) => key.split(':')[0] !== scale && isShared(before, key.split(':')[0]!, experiment) && Number(readingAt(before, key)) !== Number(text));
  return [
    fill(words.entered, { row: row + 1, values: Object.entries(taken.reads).map(([id, by]) => `${words.reads[by]} ${own[keyIn(before.steps, id, row)]} ${(before.steps.step(id) as Reading).unit}`).join(', ') }),
    ...(isOutside(ask, experiment, scale, l) ? [fill(words.outside, { low, high })] : []),
    ...(setting.isProtected ? [words.stillIn] : []),
    ...(changed ? [words.others] : []),
  ].join(' ');
}

/** Whether a reading goes with more null points than one. */
function isShared({ steps, printed }: SetNotebook, id: string, { bench }: Experiment): boolean {
  if (steps.step(id).per === undefined) return true;
  const { pairs } = bench!(printed.ask, printed.streams, printed.truth);
  return pairs.flatMap(({ taken }) => taken).filter(({ reads }) => id in reads).length > 1;
}

function readingAt({ sheet }: SetNotebook, key: string): string {
  const [id, row] = key.split(':') as [string, string];
  return [sheet.readings[id]!].flat()[Number(row)]!;
}
