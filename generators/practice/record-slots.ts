import type { Layout } from '../experiments/layout.ts';
import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { quantityLine } from '../quantities/working.ts';
import { type FoundFault, finishedView, foundFaults } from '../sheets/finished-view.ts';
import type { RowLabel } from '../sheets/record.ts';
import type { WorkedStep } from '../sheets/worked-steps.ts';
import { workOut } from '../sheets/worked.ts';
import { type Fillings, formulaHtml } from './fillings.ts';
import type { FinishedSheet } from './finished-record.ts';
import { placeKey } from './places.ts';

/** What was done wrong in a sentence, by the id of the mistake. */
export type MistakeWords = Readonly<Record<string, string>>;

/** The slots of a record that comes filled in: what stands in its places, its working as it was done, and for the key its mistakes. */
export function recordSlots(sheet: FinishedSheet, program: Program, layout: Layout, words: SpokenWords, mistakes: MistakeWords): Fillings {
  const wrote = Object.entries(sheet.finished).flatMap(([id, written]) => {
    const { per, unit } = program.step(id);
    return written.map((each, row): [string, string] => [`wrote:${placeKey(id, row)}`, formulaHtml(quantityLine(each, per ? '' : unit, words))]);
  });
  const working = finishedView(sheet, program, layout, words).working.map((step): [string, string] => [`working:${step.id}`, workingOf(step)]);
  const found = foundFaults(sheet, workOut(sheet, program), layout, words).map((fault) => `<li>${toldOf(fault, mistakes)}</li>`);
  return { ...Object.fromEntries([...wrote, ...working]), mistakes: found.join('') };
}

function workingOf({ formula, rows }: WorkedStep): string {
  const lines = rows.flatMap(({ label, lines: own }) => own.map((line) => `${label ? `<span class="row">${nameOf(label)}</span> ` : ''}${formulaHtml({ ...line, tex: unbroken(line.tex) })}`));
  return [formulaHtml(formula), ...lines].map((line) => `<p>${line}</p>`).join('');
}

/** Paper breaks a long sum into lines; a page can be moved sideways. */
const unbroken = (tex: string) => tex.replaceAll(/\\(?:begin|end)\{gathered\}|\\\\ \{\}/g, '');

const toldOf = ({ symbol, label, wrote, right, slip }: FoundFault, mistakes: MistakeWords) =>
  `${formulaHtml(symbol)}${label ? `, ${nameOf(label)}` : ''} = ${formulaHtml(wrote)}: ${mistakes[slip]} <span class="value">${formulaHtml(right)}</span>`;

const nameOf = ({ number, direction }: RowLabel) => `${number} ${direction ?? ''}`.trim();
