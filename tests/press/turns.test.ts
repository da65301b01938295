import { expect, test } from 'vitest';
import { turns } from '../../generators/press/turns.ts';

/** Runs so many pieces of work and gives the largest number that ran at once. */
async function mostAtOnce(places: number, pieces: number): Promise<number> {
  const turn = turns(places);
  let running = 0;
  let most = 0;
  const work = async () => {
    most = Math.max(most, ++running);
    await new Promise((go) => setTimeout(go, 2));
    running--;
  };
  await Promise.all(Array.from({ length: pieces }, () => turn(work)));
  return most;
}

test('no more work runs at once than there are places, and all places are used', async () => {
  expect(await mostAtOnce(1, 5)).toBe(1);
  expect(await mostAtOnce(2, 7)).toBe(2);
  expect(await mostAtOnce(3, 2)).toBe(2);
});

test('work begins in the order in which it was given', async () => {
  const turn = turns(1);
  const begun: number[] = [];
  await Promise.all([0, 1, 2, 3].map((i) => turn(async () => void begun.push(i))));
  expect(begun).toEqual([0, 1, 2, 3]);
});

test('work that fails gives its place to the next', async () => {
  const turn = turns(1);
  const failing = turn(() => Promise.reject(new Error('no')));
  await expect(Promise.all([failing, turn(() => Promise.resolve('yes'))])).rejects.toThrow('no');
  expect(await turn(() => Promise.resolve('still'))).toBe('still');
});
