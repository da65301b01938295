import type { Layout } from '../experiments/layout.ts';
import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, formulaLine, quantityLine, workedLine } from '../quantities/working.ts';
import { answerRow } from '../sheets/answers.ts';
import { workOut } from '../sheets/worked.ts';
import type { PracticeSet } from './make-set.ts';
import { type Place, placeKey, placesOf } from './places.ts';
import { mathmlOf } from './tex.ts';

/** What stands in the slots of a page, as HTML by the slot's name: of the default set in Node, of any other in the page. */
export type Fillings = Record<string, string>;

/** Sentences that hang on the set, made ready by the build: by the wire, by the case of a choice, by the choice of a verdict. */
export interface ReadySentences {
  samples: readonly string[];
  forms: Record<string, Record<string, string>>;
  verdicts: Record<string, Record<string, string>>;
}

export const formulaHtml = (line: Line): string => {
  const math = mathmlOf(line.tex);
  const plain = PLAIN.exec(math);
  return plain ? `${plain[1] ?? ''}${plain[2] ?? ''}` : math.replace('<math', '<math displaystyle="true"');
};

/** A number, a unit, or a number with its unit: text does. */
const PLAIN = /^<math[^>]*>(?:<mn>([^<]*)<\/mn>)?(?:<mtext>([^<]*)<\/mtext>)?<\/math>$/;

/** The slots: readings, formulas, the key's values, ranges and working, and the sentences of this set. */
export function fillings(set: PracticeSet, program: Program, layout: Layout, ready: ReadySentences, words: SpokenWords): Fillings {
  const { sheet } = set;
  const slots: Fillings = { code: set.code, sample: ready.samples[set.wires[0]!]! };
  for (const step of program.steps) {
    if ((step.kind === 'reading' && !(step.id in sheet.conventions.drawn)) || step.kind === 'given')
      [sheet.readings[step.id]!].flat().forEach((written, row) => (slots[`read:${placeKey(step.id, row)}`] = formulaHtml(quantityLine(written, step.per ? '' : step.unit, words))));
    if (step.kind === 'relation' || step.kind === 'summary') slots[`formula:${step.id}`] = formulaHtml(formulaLine(program, step, words));
  }
  for (const { choice } of layout.decided ?? []) slots[`form:${choice}`] = ready.forms[choice]?.[sheet.form[choice]!] ?? '';
  return { ...slots, ...keySlots(set, program, layout, ready, words) };
}

function keySlots({ sheet }: PracticeSet, program: Program, layout: Layout, ready: ReadySentences, words: SpokenWords): Fillings {
  const worked = workOut(sheet, program);
  const places = placesOf(program, layout, sheet);
  const slots = places.flatMap((place): [string, string][] => [[`key:${place.key}`, keyOf(place)]]);
  for (const [id, choices] of Object.entries(worked.verdicts())) choices.forEach((choice, row) => slots.push([`verdict:${placeKey(id, row)}`, ready.verdicts[id]?.[choice] ?? '']));
  return Object.fromEntries(slots);

  function keyOf({ id, row, kind }: Place): string {
    const step = program.step(id);
    if (kind === 'drawn' || (step.kind !== 'relation' && step.kind !== 'summary')) return formulaHtml(quantityLine([sheet.readings[id]!].flat()[row]!, step.unit, words));
    const { low, high, value } = answerRow(worked, layout, id, row, words);
    const range = high ? ` <span class="range">(${formulaHtml(low)} … ${formulaHtml(high)})</span>` : '';
    return `<span class="value">${formulaHtml(value)}</span>${range}<span class="line">${formulaHtml(workedLine(program, step, row, worked.values, words))}</span>`;
  }
}
