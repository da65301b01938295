import type { Browser } from 'puppeteer-core';

const LOOK_EVERY = 200;

/** The browser's process has ended, whether or not word of it has come through the pipe. */
export function isGone(browser: Browser): boolean {
  return !browser.connected || hasEnded(browser.process());
}

const hasEnded = (running: ReturnType<Browser['process']>) => running !== null && (running.exitCode !== null || running.signalCode !== null);

/** Ends the browser, and waits until its process has ended too: the pipe falls silent before that. */
export async function endOf(browser: Browser): Promise<void> {
  const running = browser.process();
  if (running === null || hasEnded(running)) return;
  const ended = new Promise((done) => running.once('exit', done));
  browser.close().catch(() => running.kill('SIGKILL'));
  await ended;
}

/**
 * Work on a browser, which fails when the browser is gone. What was asked of a browser that is killed may
 * never be answered, and with nothing left to wait for Node would end in the middle of the work.
 */
export function whileAlive<T>(browser: Browser, work: Promise<T>): Promise<T> {
  return failing(work, LOOK_EVERY, () => isGone(browser), 'the browser is gone');
}

/** Work that fails when it is not done in time. */
export function inTime<T>(work: Promise<T>, milliseconds: number, late: string): Promise<T> {
  return failing(work, milliseconds, () => true, late);
}

function failing<T>(work: Promise<T>, every: number, failed: () => boolean, why: string): Promise<T> {
  let watch: NodeJS.Timeout;
  const failure = new Promise<never>((_, fail) => {
    watch = setInterval(() => failed() && fail(new Error(why)), every);
  });
  return Promise.race([work, failure]).finally(() => clearInterval(watch));
}
