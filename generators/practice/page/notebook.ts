import { type Program, program } from '../../quantities/program.ts';
import { type Answer, checkAll } from '../check.ts';
import { fillings } from '../fillings.ts';
import { type PracticeSet, makeSet } from '../make-set.ts';
import { withOwnReadings } from '../set-bench.ts';
import { type Place, placesOf } from '../places.ts';
import type { Line } from '../../quantities/working.ts';
import type { Sheet } from '../../sheets/sheet.ts';
import { type SetCode, readSetCode } from '../set-code.ts';
import type { PageData } from './data.ts';
import { all } from './elements.ts';
import type { Field } from './field.ts';
import { namedIn } from './named-in.ts';
import { type Texts, keep, keepOne, kept } from './kept.ts';

/** How far the help at a place has gone. */
export interface Help {
  /** The last wrong value that no slip explained, and how many different ones there have been. */
  answered: string;
  depth: number;
  /** Lines of the working that the student has opened. */
  opened: number;
}

/** The working that stands behind a place. */
export interface Working {
  lines: Line[];
  /** How many of the lines put numbers in and do not yet say the value. */
  hints: number;
  /** What to look at before any formula. */
  look?: string;
}

/** Readings on the page, with what the student wrote to them. */
export interface Notebook {
  /** Under which what is written is kept. */
  name: string;
  sheet: Sheet;
  steps: Program;
  places: Place[];
  texts: Texts;
  fields: Map<string, Field>;
  helps: Map<string, Help>;
  /** What is known of each place, by its key; brought up to date by `judgeAll`. */
  known: Map<string, Answer>;
  /** The working of a place where it is more than that of its own step. */
  working?(place: Place, notebook: Notebook, words: PageData['words']): Working;
}

/** A practice set on the page. */
export interface SetNotebook extends Notebook {
  /** As it is printed, also where the student has taken readings of their own. */
  printed: PracticeSet;
  /** Readings that the student took on the bench, by place. */
  own: Texts;
}

/** The code in the address of the page; else that of the set which the page came with. */
export const codeOfPage = (): SetCode => readSetCode(namedIn(location.hash)) ?? (document.body.dataset['set'] as SetCode);

/** Makes the set of a code, shows it in the page's slots, and takes up what was written in it before, with the readings that the student took on its bench. */
export function openSet({ experiment, kit, ready, words, drawnSlots }: PageData, code: SetCode): SetNotebook {
  const { layout } = experiment;
  const printed = makeSet(experiment, kit, code);
  const steps = program(experiment.steps(printed.sheet.form));
  const own = kept(benchName(kit.experiment, code));
  const set = withOwnReadings(printed, own);
  const slots = { ...fillings(set, steps, layout, ready, words.spoken), ...drawnSlots?.(set, steps, layout, words.figures!) };
  for (const slot of all('[data-slot]')) slot.innerHTML = slots[slot.dataset['slot']!] ?? '';
  const places = placesOf(steps, layout, set.sheet).filter(({ key }) => holderOf(key));
  const name = `practice:${kit.experiment}:${code}`;
  const notebook: SetNotebook = { name, sheet: set.sheet, printed, own, steps, places, texts: kept(name), fields: new Map(), helps: new Map(), known: new Map() };
  judgeAll(notebook);
  return notebook;
}

/** Under which the readings from the bench of a set are kept. */
export const benchName = (experiment: string, code: SetCode) => `bench:${experiment}:${code}`;

/** Where a place stands on the page. */
export const holderOf = (key: string) => document.querySelector<HTMLElement>(`[data-place="${key}"]`);

/** What a place is called: 'X, row 2'. */
export const labelOf = (key: string) => holderOf(key)!.dataset['label']!;

/** Judges every place on what is written now. */
export function judgeAll(notebook: Notebook): void {
  const { sheet, steps, places, texts } = notebook;
  notebook.known = new Map(checkAll(sheet, steps, places, texts).map((answer, i) => [places[i]!.key, answer]));
}

/** Takes down what stands in the fields of a place. */
export function takeDown(notebook: Notebook, key: string): void {
  writeDown(notebook, key, notebook.fields.get(key)!.text());
  judgeAll(notebook);
}

/** Keeps what the student wrote or chose, under its key. */
export function writeDown({ name, texts }: Notebook, key: string, text: string): void {
  texts[key] = text;
  keepOne(name, key, text);
}

/** Clears all that was written in a set. */
export function clearSet(notebook: Notebook): void {
  for (const field of notebook.fields.values()) field.write('');
  for (const key of Object.keys(notebook.texts)) notebook.texts[key] = '';
  keep(notebook.name, {});
  notebook.helps.clear();
  judgeAll(notebook);
}

export function helpAt({ helps }: Notebook, key: string): Help {
  const help = helps.get(key) ?? { answered: '', depth: 0, opened: 0 };
  helps.set(key, help);
  return help;
}
