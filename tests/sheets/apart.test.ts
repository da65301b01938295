import { expect, test } from 'vitest';
import { accepted, clashes, marks } from '../../generators/sheets/apart.ts';
import type { Worked } from '../../generators/sheets/worked.ts';

/** A worked sheet of which only the cells are looked at: exact value and accept range a row. */
function sheet(cells: Record<string, [exact: number, low: number, high: number][]>): Worked {
  return {
    values: { exact: new Map(Object.entries(cells).map(([id, all]) => [id, all.map(([exact]) => exact)])) },
    cells: (id: string) => cells[id]!.map(([exact, low, high]) => ({ exact, shown: `${exact}`, accept: [low, high] })),
  } as unknown as Worked;
}

test('two sheets clash where the answer of one lies in the range of the other, whichever way round', () => {
  const wide = sheet({ X: [[2.0, 1.9, 2.1]] });
  const narrow = sheet({ X: [[2.08, 2.07, 2.09]] });
  expect(clashes(marks(wide, ['X']), marks(narrow, ['X']))).toEqual([{ id: 'X', row: 0 }]);
  expect(clashes(marks(narrow, ['X']), marks(wide, ['X']))).toEqual([{ id: 'X', row: 0 }]);
});

test('half of the comparison asks only whether the other sheet accepts what is right on this one', () => {
  const wide = marks(sheet({ X: [[2.0, 1.9, 2.1]] }), ['X']);
  const narrow = marks(sheet({ X: [[2.08, 2.07, 2.09]] }), ['X']);
  expect(accepted(narrow, wide)).toEqual([{ id: 'X', row: 0 }]);
  expect(accepted(wide, narrow)).toEqual([]);
});

test('ranges that only overlap hold neither answer', () => {
  expect(clashes(marks(sheet({ X: [[2.0, 1.9, 2.1]] }), ['X']), marks(sheet({ X: [[2.15, 2.05, 2.25]] }), ['X']))).toEqual([]);
});

test('rows are compared with the same row, and only the quantities asked for', () => {
  const one = sheet({ X: [[1, 0.9, 1.1], [2, 1.9, 2.1]], d: [[5, 4, 6]] });
  const other = sheet({ X: [[2, 1.9, 2.1], [2, 1.9, 2.1], [9, 8, 10]], d: [[5, 4, 6]] });
  expect(clashes(marks(one, ['X']), marks(other, ['X']))).toEqual([{ id: 'X', row: 1 }]);
  expect(clashes(marks(one, ['d', 'X']), marks(other, ['d', 'X']))).toEqual([{ id: 'd', row: 0 }, { id: 'X', row: 1 }]);
});
