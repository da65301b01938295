import { element } from '../svg.ts';
import { drawn, label, stroke } from './ink.ts';

/** Degrees from the zero of the dial to its last division. */
export const SWING = 50;

/** The face of a galvanometer with so many divisions on each side of its zero, its needle at the zero; seen through −50 −50 100 58. */
export function benchDial(divisions: number): string {
  const turned = (by: number) => `rotate(${(by * SWING) / divisions})`;
  const all = Array.from({ length: 2 * divisions + 1 }, (_, i) => i - divisions);
  return [
    drawn('path', { class: 'paper', d: 'M-46 -6A47 47 0 0 1 46 -6L40 6H-40Z' }),
    ...all.map((division) => stroke(`M0 -38V${division % 10 === 0 ? -33 : division % 5 === 0 ? -34.4 : -36}`, { class: 'mark', transform: turned(division) })),
    ...all.filter((division) => division % 10 === 0).map((division) => label(0, -40, String(Math.abs(division)), { transform: turned(division) })),
    label(-33, 0, 'G'),
    element('g', { class: 'needle', 'data-needle': '', transform: 'rotate(0)' }, stroke('M0 1V-36.4', {})),
    drawn('circle', { class: 'pivot', r: 2.4 }),
  ].join('');
}
