import type { Layout } from '../experiments/layout.ts';
import type { Digits } from '../quantities/step.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, quantityLine, symbolLine } from '../quantities/working.ts';
import { roundOutward } from '../quantities/written.ts';
import { type RowLabel, labelIn } from './record.ts';
import type { Worked } from './worked.ts';

/** An answer with the range that is accepted for it. */
export interface AnswerRow {
  id: string;
  /** From 0; 0 for an answer that is no table's. */
  row: number;
  /** What its row is called; only in a table. */
  label?: RowLabel;
  symbol: Line;
  value: Line;
  low: Line;
  /** Nothing where only one value can be right. */
  high?: Line;
}

/** Every answer of the working, row by row. */
export function answerRows(worked: Worked, layout: Layout, words: SpokenWords): AnswerRow[] {
  return layout.working.flatMap((id) => worked.cells(id).map((_, row) => answerRow(worked, layout, id, row, words)));
}

/** One answer; its accept range is written one figure finer than the answer, its ends rounded outward. */
export function answerRow({ program, cells }: Worked, { observations }: Layout, id: string, row: number, words: SpokenWords): AnswerRow {
  const step = program.step(id);
  if (step.kind !== 'relation' && step.kind !== 'summary') throw new Error(`${id} is no answer`);
  const { shown, accept } = cells(id)[row]!;
  const [low, high] = roundOutward(accept, finer(step.digits));
  return {
    id,
    row,
    ...(step.per === undefined ? {} : { label: labelIn(observations, step.per, row) }),
    symbol: symbolLine(program, id, words),
    value: quantityLine(shown, step.unit, words),
    ...(low === high
      ? { low: quantityLine(shown, step.unit, words) }
      : { low: quantityLine(low, '', words), high: quantityLine(high, step.unit, words) }),
  };
}

const finer = (digits: Digits): Digits => ('decimals' in digits ? { decimals: digits.decimals + 1 } : { figures: digits.figures + 1 });
