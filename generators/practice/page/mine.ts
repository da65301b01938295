import type { Ask } from '../../experiments/ask.ts';
import { mean } from '../../quantities/summary.ts';
import { fill } from '../../quantities/spoken.ts';
import { formulaLine, symbolLine } from '../../quantities/working.ts';
import { round } from '../../quantities/written.ts';
import { doubts } from '../../sheets/doubts.ts';
import { workOut } from '../../sheets/worked.ts';
import { formulaHtml } from '../fillings.ts';
import { provideFormulas } from '../formula.ts';
import { type Measured, measured, nextSetting } from '../measured.ts';
import type { MineData, MineWords } from './data.ts';
import { all, make, onPress } from './elements.ts';
import { putFields } from './fields.ts';
import { type Texts, keep, keepOne, kept } from './kept.ts';
import { type Notebook, holderOf, judgeAll } from './notebook.ts';
import { rowByRow } from './rows.ts';

/** Brings a page for readings that were really taken to life: what they say of each other, what to take next, and the working after the student's own entries. */
export function startMine(data: MineData): void {
  provideFormulas(data.formulas);
  const { experiment, kit } = data;
  const name = `mine:${experiment.id}`;
  const texts: Texts = kept(name);
  const inputs = all<HTMLInputElement | HTMLSelectElement>('[data-reading]');
  const askNow = (): Ask => ({ ...kit.ask, wire: kit.wires[Number(texts['wire'] ?? 0)]!, others: [] });
  // What is known of the apparatus stands there until the student says otherwise.
  const usual = measured(experiment, askNow(), kit.conventions, {});
  const given = (key: string) => usual.steps.steps.some((step) => step.kind === 'given' && `${step.id}:0` === key) ? String(usual.sheet.readings[key.slice(0, -2)]) : undefined;
  const show = () => {
    const ask = askNow();
    const found = measured(experiment, ask, kit.conventions, texts);
    for (const slot of all('[data-slot^="formula:"]')) slot.innerHTML = formulaOf(found, slot.dataset['slot']!.slice('formula:'.length), data);
    for (const holder of all('[data-place]')) holder.replaceChildren();
    putFields(notebookOf(found, texts, name), data);
    for (const told of all('[data-agree]')) told.replaceChildren(...remarks(found, ask, data).map((remark) => make('p', {}, remark)));
  };
  for (const input of inputs) {
    const key = input.dataset['reading']!;
    input.value = texts[key] ?? given(key) ?? input.value;
    input.addEventListener('change', () => {
      texts[key] = input.value.trim();
      keepOne(name, key, texts[key]);
      show();
    });
  }
  onPress('clear', () => {
    keep(name, {});
    location.reload();
  });
  onPress('print', () => print());
  rowByRow(data.words.practice);
  show();
}

/** The working stands below the readings: the same notebook as in practice, its readings the student's own. */
function notebookOf({ sheet, steps, places }: Measured, texts: Texts, name: string): Notebook {
  const shown = places.filter(({ key }) => holderOf(key));
  const notebook: Notebook = { name, sheet, steps, places: shown, texts, fields: new Map(), helps: new Map(), known: new Map() };
  judgeAll(notebook);
  return notebook;
}

function formulaOf({ steps }: Measured, id: string, { words }: MineData): string {
  const step = steps.step(id);
  return formulaHtml(step.kind === 'relation' || step.kind === 'summary' ? formulaLine(steps, step, words.spoken) : symbolLine(steps, id, words.spoken));
}

/** Whether the rows agree, what no instrument shows, and which resistance to take next. */
function remarks(found: Measured, ask: Ask, { experiment, words: { mine, spoken } }: MineData): string[] {
  const { sheet, steps, rows, faults, unread } = found;
  const nameOf = (key: string) => document.querySelector(`[data-reading="${key}"]`)?.getAttribute('aria-label') ?? key;
  const wrong = [...unread.map((key) => fill(mine.unread, { what: nameOf(key) })), ...Object.entries(faults).map(([key, fault]) => fill(mine.fault, { what: nameOf(key), fault }))];
  if (wrong.length > 0) return wrong;
  const own = (id: string) => (rows[steps.step(id).per ?? ''] ?? 0) > 0;
  const doubtful = doubts(sheet, steps, experiment.layout, ask).filter(({ id }) => own(id)).map(({ about, id, row }) =>
    fill(mine[about], { quantity: spoken.symbols[id] ?? id, row: row + 1, low: ask.window[0], high: ask.window[1] }),
  );
  const bridge = rows['bridge'] ?? 0;
  const agree = bridge >= 3 && doubtful.length === 0 ? [mine.agree] : bridge === 0 ? [mine.begin] : bridge < 3 ? [mine.more] : [];
  return [...doubtful, ...agree, ...next(found, ask, mine)];
}

function next({ sheet, steps, rows }: Measured, ask: Ask, mine: MineWords): string[] {
  const has = (id: string) => steps.steps.some((step) => step.id === id);
  if ((rows['bridge'] ?? 0) === 0 || !has('R') || !has('l') || !has('X')) return [];
  const { values } = workOut(sheet, steps);
  const X = mean(values.exact.get('X')!);
  const setting = nextSetting(ask, X, [sheet.readings['R']!].flat(), [sheet.readings['l']!].flat().map(Number));
  return [setting ? fill(mine.next, { R: setting.R, l: round(setting.l, { decimals: 0 }, 'even') }) : mine.none];
}
