import { provideFormulas } from '../formula.ts';
import { type SetCode, readSetCode } from '../set-code.ts';
import type { PageData } from './data.ts';
import { putFields } from './fields.ts';
import { type Notebook, openSet } from './notebook.ts';
import { rowByRow } from './rows.ts';
import { setTools } from './tools.ts';

/** Brings a practice page to life: its set, its fields, and what is said of them. */
export function startPractice(data: PageData): void {
  provideFormulas(data.formulas);
  let notebook: Notebook;
  const open = () => {
    notebook = openSet(data, readSetCode(location.hash) ?? (document.body.dataset['set'] as SetCode));
    putFields(notebook, data);
  };
  addEventListener('hashchange', open);
  rowByRow(data.words.practice);
  open();
  setTools(() => notebook, data.words.practice);
}
