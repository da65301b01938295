import { provideFormulas } from '../formula.ts';
import type { PageData } from './data.ts';
import { startChoices } from './choices.ts';
import { putFields } from './fields.ts';
import { type Texts, keep } from './kept.ts';
import { type SetNotebook, benchName, codeOfPage, openSet } from './notebook.ts';
import { rowByRow } from './rows.ts';
import { setTools } from './tools.ts';

/** Brings a practice page to life: its set, its fields, and what is said of them. */
export function startPractice(data: PageData): void {
  provideFormulas(data.formulas);
  let notebook: SetNotebook;
  const putChoices = startChoices(() => notebook, data.words.practice);
  const show = () => {
    notebook = openSet(data, codeOfPage());
    putFields(notebook, data);
    putChoices();
  };
  const take = (own: Texts) => {
    keep(benchName(data.kit.experiment, codeOfPage()), Object.keys(own).length === 0 ? {} : { ...notebook.own, ...own });
    show();
    return notebook;
  };
  const putOnBench = data.words.bench && data.startBench?.(data.words.bench, data.experiment, take);
  const putGauge = data.words.gauge && data.startGauge?.(data.words.gauge, take);
  const putRule = data.words.rule && data.startRule?.(data.words.rule, take);
  const open = () => {
    show();
    putOnBench?.(notebook);
    putGauge?.(notebook);
    putRule?.(notebook);
  };
  addEventListener('hashchange', open);
  rowByRow(data.words.practice);
  open();
  setTools(() => notebook, data.words.practice, putChoices);
}
