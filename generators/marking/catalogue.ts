import type { Program } from '../quantities/program.ts';
import { type Chain, blankBefore } from './chain.ts';
import { type Work, exactly, reachOf, within } from './reach.ts';
import type { Asked } from './row-slips.ts';
import { rowsIn } from './rows.ts';
import type { Explanation } from './slip.ts';
import { type Made, slipped, slipsOf } from './slipped.ts';

/** The steps whose slips a value can show: its own, and those before it that the student's figures do not hide. */
export function openSteps({ program, own, sheet }: Work, id: string): string[] {
  const entered = (step: string) => {
    const mine = own[step];
    return mine !== undefined && Array.from({ length: Math.max(mine.length, rowsOf(step)) }, (_, row) => mine[row]).every((value) => value !== undefined);
  };
  const rowsOf = (step: string) => {
    const { per } = program.step(step);
    return per === undefined ? 1 : rowsIn(program, per, sheet.readings);
  };
  return blankBefore(program, id, entered);
}

/** Slips of the catalogue, one by one, that give the value on the student's own figures. */
export function singleSlips(work: Work, asked: Asked, open: readonly string[]): Explanation[] {
  const right = exactly(work, asked.id);
  return made(work, open).filter((one) => explains(work, asked, [one], right)).map(({ at, slip }) => ({ slip: slip.id, at }));
}

/** Two slips at two different steps. */
export function pairsOfSlips(work: Work, asked: Asked, open: readonly string[]): Explanation[] {
  const right = exactly(work, asked.id);
  const all = made(work, open);
  const pairs = all.flatMap((one, i) => all.slice(i + 1).filter(({ at }) => at !== one.at).map((other): [Made, Made] => [one, other]));
  return pairs.filter((pair) => explains(work, asked, pair, right)).map(([one, other]) => ({ slip: one.slip.id, at: one.at, with: { slip: other.slip.id, at: other.at } }));
}

function made({ program }: Work, open: readonly string[]): Made[] {
  return open.flatMap((at) => slipsOf(program.step(at)).map((slip) => ({ at, slip })));
}

/** Whether honest work with these slips gives the value; most are told at a glance, without intervals. */
function explains(work: Work, { id, row, value, right: [low, high] }: Asked, slips: readonly Made[], right: Chain): boolean {
  const wrong = { ...work, program: slipped(work.program, slips) };
  const chain = exactly(wrong, id);
  const glance = chain.get(id)![row]!;
  if (!Number.isFinite(glance)) return false;
  const farthest = 2 * (high - low) + (ROUNDING + coarseness(wrong.program, chain, right, id)) * Math.max(Math.abs(glance), Math.abs(value));
  return Math.abs(glance - value) <= farthest && within(value, reachOf(wrong, id)[row]!);
}

/** Beyond this part of a value no rounding to significant figures brings two values together. */
const ROUNDING = 0.05;

/** Rounding to decimals may take any part of a value that a slip has made small: 0.001 to two decimals is nothing. */
function coarseness({ step: named }: Program, chain: Chain, right: Chain, target: string): number {
  let sum = 0;
  for (const [id, column] of chain) {
    const step = id === target ? undefined : named(id);
    if ((step?.kind !== 'relation' && step?.kind !== 'summary') || !('decimals' in step.digits)) continue;
    const half = Number(`0.5e-${step.digits.decimals}`);
    sum += column.reduce((most, value, row) => (value === 0 || value === right.get(id)?.[row] ? most : Math.max(most, half / Math.abs(value))), 0);
  }
  return sum;
}
