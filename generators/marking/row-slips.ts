import type { Interval, Summary } from '../quantities/step.ts';
import { type Work, exactly, reachOf, within } from './reach.ts';
import type { Explanation } from './slip.ts';

/** A value of which is asked how it came about. */
export interface Asked {
  id: string;
  row: number;
  value: number;
  /** What would have been right. */
  right: Interval;
}

/**
 * Slips in one row of a table: the neighbour's value, a row left out of a mean or its sum divided by a wrong count, a
 * borrow forgotten in a difference. They explain many values, so they are tried where nothing else does.
 */
export function rowSlips(work: Work, asked: Asked, blank: readonly string[]): Explanation[] {
  const step = work.program.step(asked.id);
  const slips = step.kind === 'summary' && step.by === 'mean' ? meanSlips(work, step, asked) : [];
  return [...(step.per ? neighbours(work, asked) : []), ...slips, ...borrows(work, asked, blank)];
}

function neighbours(work: Work, { id, row, value }: Asked): Explanation[] {
  const ranges = reachOf(work, id);
  const beside = [row - 1, row + 1].filter((other) => ranges[other] !== undefined && within(value, ranges[other]));
  return beside.map((other) => ({ slip: 'row of the table', at: id, row: other + 1 }));
}

function meanSlips(work: Work, { id, of }: Summary, asked: Asked): Explanation[] {
  const column = exactly(work, id).get(of[0]!)!;
  const sum = column.reduce((a, b) => a + b, 0);
  const count = column.length;
  const leftOut = column.flatMap((value, row): Explanation[] => (near((sum - value) / (count - 1), asked) ? [{ slip: 'row left out', at: id, row: row + 1 }] : []));
  const counted = [count - 1, count + 1].some((divisor) => divisor > 0 && near(sum / divisor, asked));
  return [...leftOut, ...(counted ? [{ slip: 'wrong count of rows', at: id }] : [])];
}

/** As near to a value as the right answer's range is wide. */
function near(candidate: number, { value, right: [low, high] }: Asked): boolean {
  const scale = Math.abs(candidate) / Math.max(Math.abs(low), Math.abs(high), Number.MIN_VALUE);
  const half = ((high - low) / 2) * Math.max(1, scale);
  return within(value, [candidate - half, candidate + half]);
}

/** 100 − 43.2 = 66.8 or 57.8: a ten or a one too much or too little, in one row of a difference that was not entered. */
function borrows(work: Work, asked: Asked, blank: readonly string[]): Explanation[] {
  const { program, own } = work;
  return blank.flatMap((id) => {
    const step = program.step(id);
    if (step.kind !== 'relation' || !step.per || id === asked.id || program.compiled(id).as.expression.is !== 'difference') return [];
    return exactly(work, id).get(id)!.flatMap((value, row): Explanation[] => {
      if (own[id]?.[row] !== undefined || Math.abs(value) < 10) return [];
      const slipped = BORROWED.some((by) => near(exactly({ ...work, own: { ...own, [id]: onlyIn(row, String(value + by)) } }, asked.id).get(asked.id)![asked.row]!, asked));
      return slipped ? [{ slip: 'borrow in a difference', at: id, row: row + 1 }] : [];
    });
  });
}

const BORROWED = [1, -1, 10, -10];

function onlyIn(row: number, value: string): (string | undefined)[] {
  const own: (string | undefined)[] = [];
  own[row] = value;
  return own;
}
