import { written } from '../apparatus/decimal.ts';
import type { Program } from '../quantities/program.ts';
import type { Written } from '../quantities/step.ts';
import type { PracticeSet } from './make-set.ts';

/** The wire of a set on its rule: the reading that it gives, and the length in cm that the printed reading was taken of. */
export interface RuleBench {
  id: string;
  length: number;
}

/** Nothing where the set has no single length to be read, or shows it drawn. */
export function ruleBench(program: Program, { sheet, truth }: PracticeSet): RuleBench | undefined {
  const rules = program.steps.filter((step) => step.kind === 'reading' && step.on === 'rule' && step.per === undefined && !(step.id in sheet.conventions.drawn));
  const length = truth['L'];
  return rules.length === 1 && length !== undefined ? { id: rules[0]!.id, length } : undefined;
}

/** A length as it is read, to a division of the rule; nothing where it is another. */
export function lengthAsShown(length: number, text: string): Written | undefined {
  const read = Number(text.replace(',', '.'));
  return text.trim() !== '' && Math.abs(read - Math.round(10 * length) / 10) <= 0.1 + 1e-9 ? written(Math.round(10 * read), 1) : undefined;
}
