import { expect, test } from 'vitest';
import { abreast, type Job } from '../../generators/press/abreast.ts';

const pause = () => new Promise<void>((go) => setTimeout(go, 2));

test('no more jobs are under way than there are places, and no job is asked for sooner', async () => {
  let asked = 0;
  let done = 0;
  let most = 0;
  function* jobs(): Generator<Job> {
    for (let i = 0; i < 9; i++) {
      most = Math.max(most, ++asked - done);
      yield async () => {
        await pause();
        done++;
      };
    }
  }
  await abreast(3, jobs());
  expect({ asked, done, most }).toEqual({ asked: 9, done: 9, most: 3 });
});

test('jobs begin in their order', async () => {
  const begun: number[] = [];
  await abreast(2, [0, 1, 2, 3, 4].map((i) => async () => void begun.push(i)));
  expect(begun).toEqual([0, 1, 2, 3, 4]);
});

test('after a failure no job begins, and those under way end before it is told', async () => {
  const begun: number[] = [];
  const ended: number[] = [];
  const jobs = [0, 1, 2, 3, 4, 5].map((i) => async () => {
    begun.push(i);
    if (i === 1) throw new Error('job 1 failed');
    await pause();
    ended.push(i);
  });
  await expect(abreast(2, jobs)).rejects.toThrow('job 1 failed');
  expect(begun).toEqual([0, 1]);
  expect(ended).toEqual([0]);
});

test('no jobs are no work', async () => {
  await expect(abreast(2, [])).resolves.toBeUndefined();
});
