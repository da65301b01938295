import type { ScrewGauge } from '../../apparatus/screw-gauge.ts';
import { screwGauge } from '../../figures/screw-gauge.ts';
import { thimbleAt } from '../screw-gauge.ts';
import type { GaugeWords } from './gauge-words.ts';
import { dragged, perPixel } from './drag.ts';
import { all } from './elements.ts';

/** A drawn screw gauge to be turned: by dragging its thimble, by keys, or by buttons; it turns in no farther than it touches. */
export interface Thimble {
  /** Divisions from its zero line. */
  count(): number;
  /** Another gauge, or another thing between its jaws; it touches at so many divisions, and stands so many open. */
  put(gauge: ScrewGauge, touching: number, open: number): void;
}

/** Divisions beyond any wire, to which the jaws open at most. */
const WIDEST = 400;

/** How far in mm of the drawing the near side of the thimble moves for a turn: its circumference there. */
const ROUND = 2 * Math.PI * 20;

export function thimble(root: HTMLElement, words: GaugeWords, say: (text: string) => void): Thimble {
  const drawn = root.querySelector<HTMLElement>('[data-gauge-drawn]')!;
  let gauge: ScrewGauge;
  let [count, touching] = [0, 0];
  const show = () => {
    const { pitch, divisions } = gauge;
    const { svg, seen } = screwGauge({ id: 'turned', pitch: Number(pitch) === 1 ? 1 : 0.5, divisions, ...thimbleAt(gauge, count) }, words.figures);
    drawn.innerHTML = svg;
    drawn.setAttribute('aria-valuenow', String(count));
    drawn.setAttribute('aria-valuetext', seen);
    return seen;
  };
  const turnTo = (to: number) => {
    count = Math.max(touching, Math.min(WIDEST, Math.round(to)));
    const seen = show();
    say(to < count ? words.slips : seen);
  };
  const divisionsIn = (pixels: number) => (pixels * perPixel(drawn.querySelector('svg')!) * gauge.divisions) / ROUND;
  dragged(drawn, { starts: () => count, moves: (start, _, down) => turnTo(start + divisionsIn(down)) });
  const steps: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -10, PageUp: 10 };
  drawn.addEventListener('keydown', (event) => {
    const step = event.key === 'Home' ? -Infinity : steps[event.key];
    if (step === undefined) return;
    event.preventDefault();
    turnTo(count + (event.shiftKey && Math.abs(step) === 1 ? 10 * step : step));
  });
  for (const button of all('[data-turn]', root)) button.addEventListener('click', () => turnTo(count + Number(button.dataset['turn'])));
  return {
    count: () => count,
    put(another, at, open) {
      [gauge, touching, count] = [another, at, at + open];
      show();
    },
  };
}
