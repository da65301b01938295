import { element } from '../svg.ts';
import { drawn, label, marks, stroke } from './ink.ts';

/*
 * Scales that a page looks at through a window: the whole scale is drawn, in mm or divisions from its zero, and the page
 * chooses the piece. Drawn when the site is built, they cost its scripts nothing.
 */

/** Millimetres with a number at every centimetre, below y = 17. */
function centimetres(length: number): string {
  const scale = marks(10 * length + 1, 1, 17.4, (mark) => (mark % 10 === 0 ? 4.4 : mark % 5 === 0 ? 3.3 : 2.2));
  const numbers = Array.from({ length: length + 1 }, (_, cm) => label(10 * cm, 25.4, String(cm)));
  return drawn('rect', { class: 'paper', x: -3, y: 17.4, width: 10 * length + 6, height: 9.4 }) + stroke(scale, { class: 'mark' }) + numbers.join('');
}

/** The bridge wire over its scale with the jockey, whose knob the page presses. */
export function jockeyTape(): string {
  return [
    centimetres(100),
    stroke('M-3 15.6H1003', { class: 'wire' }),
    element(
      'g',
      { class: 'handle', 'data-tape-jockey': '' },
      drawn('rect', { class: 'hit', x: -7, y: 0, width: 14, height: 17 }) +
        element('g', { class: 'body' }, drawn('path', { class: 'grip', d: 'M-3 6.5H3V10L0.5 13H-0.5L-3 10Z' }) + drawn('rect', { class: 'knob', 'data-knob': '', x: -4.5, y: 1.5, width: 9, height: 5, rx: 1.2 })) +
        stroke('M0 13V18.6', { class: 'edge' }),
    ),
  ].join('');
}

/** Where the left terminal is laid on a rule, in mm: a student has to subtract. */
const LAID_AT = 14;

/** Where an end of a wire of so many cm lies on its rule, in mm. */
export const endAt = (end: 'left' | 'right', length: number) => Math.round(LAID_AT + (end === 'right' ? 10 * length : 0));

/** Where a window begins that shows such a place, in mm: at a number of the rule. */
export const windowFrom = (at: number) => Math.max(0, 10 * Math.round(at / 10) - 20);

/** One end of a wire on a rule of so many cm, its terminal's inner edge at a place in mm, the wire going on inwards. */
export function ruleTape(centimetresLong: number, end: 'left' | 'right', at: number): string {
  const outwards = end === 'left' ? -1 : 1;
  return (
    centimetres(centimetresLong) +
    element(
      'g',
      { 'data-end': '', transform: `translate(${at} 0)` },
      stroke(`M0 9H${-200 * outwards}`, { class: 'wire' }) + drawn('rect', { class: 'copper', x: outwards < 0 ? -16 : 0, y: 3, width: 16, height: 12 }) + stroke('M0 3V17.4', { class: 'edge' })
    )
  );
}

/** A thermometer of 0 °C to 100 °C lying down, 2 for a degree; its thread ends where the page puts it. */
export function thermometerTape(): string {
  const scale = marks(101, 2, 7.6, (mark) => (mark % 10 === 0 ? 5 : mark % 5 === 0 ? 3.8 : 2.6));
  const numbers = Array.from({ length: 11 }, (_, i) => label(20 * i, 17.4, String(10 * i)));
  return [
    drawn('rect', { class: 'paper', x: -14, y: 1, width: 228, height: 19, rx: 6 }),
    stroke(scale, { class: 'mark' }),
    ...numbers,
    ...[1, 3, 5, 7, 9].map((i) => label(20 * i - 10, 17.4, '°C', { class: 'lesser' })),
    drawn('rect', { class: 'bore', x: -10, y: 4, width: 218, height: 2.4, rx: 1.2 }),
    drawn('rect', { class: 'thread', 'data-thread': '', x: -10, y: 4.4, width: 10, height: 1.6 }),
  ].join('');
}
