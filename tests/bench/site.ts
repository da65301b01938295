/** How soon a practice page can be used with the processor throttled four times, how long a fresh set takes, and how the needle follows. */
import { builtSite, openPage } from '../site/built.ts';
import { median } from './median.ts';

const ROUNDS = Number(process.env['BENCH_ROUNDS'] ?? 5);
const THROTTLE = 4;

const built = await builtSite('resistivity');
const address = built.http('experiments/resistivity.html');

const usable: number[] = [];
const fresh: number[] = [];
const frames: number[] = [];
for (let round = 0; round < ROUNDS; round++) {
  const page = await openPage(built, address);
  await page.emulateCPUThrottling(THROTTLE);
  // The fields are there when the script of the page, which is deferred, has run: then the browser tells that the document is loaded.
  await page.reload();
  usable.push(await page.evaluate(() => (performance.getEntriesByType('navigation')[0] as PerformanceNavigationTiming).domContentLoadedEventEnd));
  await page.emulateCPUThrottling(null);
  fresh.push(
    await page.evaluate(async () => {
      const from = performance.now();
      location.hash = 'set-123456';
      await new Promise((done) => addEventListener('hashchange', done, { once: true }));
      return performance.now() - from;
    }),
  );
  frames.push(
    await page.evaluate(async () => {
      const jockey = document.querySelector<SVGElement>('[data-jockey]')!;
      document.querySelector('[data-switch="isClosed"]')!.dispatchEvent(new MouseEvent('click'));
      for (const key of ['Home', ' ']) jockey.dispatchEvent(new KeyboardEvent('keydown', { key }));
      const spent: number[] = [];
      for (let frame = 0; frame < 60; frame++) {
        await new Promise(requestAnimationFrame);
        const from = performance.now();
        jockey.dispatchEvent(new KeyboardEvent('keydown', { key: 'PageUp' }));
        // What the page shows is laid out before the frame counts as done.
        document.querySelector('[data-needle]')!.getBoundingClientRect();
        spent.push(performance.now() - from);
      }
      return Math.max(...spent);
    }),
  );
  await page.browserContext().close();
}
await built.close();

console.log(`a practice page, processor throttled ${THROTTLE} times: usable after ${median(usable).toFixed(0)} ms (aim 1000)`);
console.log(`a fresh set: ${median(fresh).toFixed(0)} ms (aim 50)`);
console.log(`the needle follows a move of the jockey in ${median(frames).toFixed(1)} ms at worst of 60 (a frame is 16.7 ms)`);
