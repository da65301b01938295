import type { Layout } from '../experiments/layout.ts';
import type { Program } from '../quantities/program.ts';
import { fill } from '../quantities/spoken.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { rowsOf } from './columns.ts';
import { coincidences } from './coincidences.ts';
import { headOf } from './heads.ts';
import { rowsIn } from './rows.ts';
import { type MarkingWords, slipWords } from './words.ts';

/** What a key says of slips that its accept ranges cannot tell from right work; nothing where there are none. */
export function keyNote(sheet: Sheet, program: Program, layout: Pick<Layout, 'working' | 'answers' | 'observations'>, symbols: Record<string, string>, words: MarkingWords): string | undefined {
  const columns = program.steps.flatMap((step) => {
    if ((step.kind !== 'relation' && step.kind !== 'summary') || ![...layout.working, ...layout.answers].includes(step.id)) return [];
    const rows = step.per === undefined ? 1 : rowsIn(program, step.per, sheet.readings);
    return Array.from({ length: rows }, (_, row) => ({ id: step.id, row, inTable: step.per !== undefined, ...rowsOf(step, layout, program.steps) }));
  });
  const found = coincidences(sheet, program, columns);
  if (found.length === 0) return undefined;
  const said = found.map(({ column, slip }) => fill(words.key.one, { answer: headOf(column, symbols, words.heads), slip: slipWords(words, slip).name ?? slip }));
  return fill(words.key.coincide, { slips: said.join('; ') });
}
