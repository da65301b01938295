import { drawn, stroke } from './ink.ts';

/** A plug between two blocks of brass, seen from above, or with it out the hole: 52 × 40. Its neighbours go on from the edges. */
export function benchPlug(): string {
  return [
    drawn('path', { class: 'brass', d: 'M0 10H22A6 6 0 0 0 22 30H0Z' }),
    drawn('path', { class: 'brass', d: 'M52 10H30A6 6 0 0 1 30 30H52Z' }),
    drawn('circle', { class: 'hole', cx: 26, cy: 20, r: 6.4 }),
    drawn('circle', { class: 'peg', cx: 26, cy: 20, r: 9.5 }),
    stroke('M19 20H33', { class: 'peg grip' }),
  ].join('');
}
