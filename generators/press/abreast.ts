import { setImmediate } from 'node:timers/promises';

/** Work that is begun when its turn comes. */
export type Job = () => Promise<void>;

/**
 * Does jobs in their order, at most so many at once, and asks for the next one only when there is a place for it: what
 * a job needs is made no sooner. After a failure none is begun; those under way end before it is thrown.
 */
export async function abreast(places: number, jobs: Iterable<Job>): Promise<void> {
  const queue = inOrder(jobs);
  const results = await Promise.allSettled(Array.from({ length: places }, () => oneAfterAnother(queue)));
  const failure = results.find(({ status }) => status === 'rejected');
  if (failure?.status === 'rejected') throw failure.reason;
}

/** One queue for all: a loop that is left by an error closes it for the others too. */
function* inOrder(jobs: Iterable<Job>): Generator<Job, undefined> {
  yield* jobs;
}

async function oneAfterAnother(queue: Generator<Job, undefined>): Promise<void> {
  for (const job of queue) {
    // Messages to the browser go out before the next document is made.
    await setImmediate();
    await job();
  }
}
