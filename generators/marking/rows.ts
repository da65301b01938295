import type { Readings } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';

/** How many rows a table of the sheet has. */
export function rowsIn({ steps }: Pick<Program, 'steps'>, table: string, readings: Readings): number {
  const column = steps.find((step) => (step.kind === 'reading' || step.kind === 'given') && step.per === table);
  return column ? [readings[column.id] ?? []].flat().length : 0;
}
