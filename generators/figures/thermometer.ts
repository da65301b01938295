import { fill } from './fill.ts';
import { size, words as letters } from './lettering.ts';
import { standing } from './standing.ts';
import { box, circle, figure, lines, pen, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords } from './words.ts';

export interface Thermometer extends Frame {
  /** In °C, from 5 to 95. */
  celsius: number;
}

const span = 30;
const perDegree = 2.4;
const left = 14.5;
const axis = 12.4;

/** A piece of 30 °C of a laboratory thermometer, 1 °C a division, lying down; 92 × 17 mm. */
export function thermometer(view: Thermometer, words: FigureWords): Drawing {
  const { celsius } = view;
  if (!(celsius >= 5 && celsius <= 95)) throw new RangeError(`${celsius} °C is not drawn: take 5 °C to 95 °C`);
  const from = 10 * Math.floor((celsius - 5) / 10);
  const at = (degree: number) => left + perDegree * (degree - from);
  const degrees = Array.from({ length: span + 1 }, (_, i) => from + i);
  const seen = fill(words.thermometer, { from, to: from + span, where: standing(celsius, 10, 10, words.standing) });
  const parts = [
    box(8, 0.3, 83, 15.4, { rx: 2.6 }),
    circle([5, axis], 3, { fill: '#000' }),
    lines([[[5, axis], [at(celsius), axis]]], 1, { 'data-part': 'thread' }),
    lines([[[at(celsius), axis - 0.5], [88, axis - 0.5]], [[at(celsius), axis + 0.5], [88, axis + 0.5]]], pen.hair),
    lines(degrees.map((degree): Point[] => [[at(degree), axis - 0.5], [at(degree), axis - (degree % 10 === 0 ? 5.6 : degree % 5 === 0 ? 4.4 : 3.4)]]), pen.thin, { 'data-part': 'marks' }),
    ...degrees.filter((degree) => degree % 10 === 0).map((degree) => letters([at(degree), axis - 6.6], String(degree), { part: 'number' })),
    letters([at(from + 25), axis - 6.6], '°C', { size: size.small }),
  ];
  return { svg: figure(view, 92, 16, seen, parts), seen };
}
