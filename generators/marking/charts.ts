import { axisFor, labelAt, along } from '../figures/axis.ts';
import { size, words as lettering } from '../figures/lettering.ts';
import { type Point, box, figure, lines, pen, tint } from '../figures/svg.ts';

/** One bar: what it stands for, how long it is, and what is written at its end. */
export interface Bar {
  label: string;
  value: number;
  says: string;
}

const BAR = 4;
const PITCH = 6.2;
const LABELS = 74;
const LONGEST = 76;

/** Bars lying under each other, their labels left, the longest `most` long. */
export function lyingBars(id: string, bars: readonly Bar[], most: number, alternative: string): string {
  const height = PITCH * bars.length + 2;
  const parts = bars.flatMap(({ label, value, says }, i) => {
    const y = PITCH * i + 2;
    const length = most === 0 ? 0 : (LONGEST * value) / most;
    return [
      lettering([LABELS - 2, y + BAR - 0.9], label, { anchor: 'end' }),
      box(LABELS, y, Math.max(length, 0.2), BAR, { fill: tint.light }),
      lettering([LABELS + length + 1.5, y + BAR - 0.9], says, { anchor: 'start' }),
    ];
  });
  return figure({ id }, LABELS + LONGEST + 20, height, alternative, [...parts, lines([[[LABELS, 0], [LABELS, height]]], pen.line)]);
}

/** Columns side by side over equal steps of marks, from 0. */
export interface Histogram {
  /** How many values lie in each step. */
  counts: number[];
  /** Where a step begins; one more than there are counts. */
  edges: string[];
  xTitle: string;
  yTitle: string;
}

const PLOT = { left: 14, top: 6, width: 130, height: 36 };

export function histogram(id: string, { counts, edges, xTitle, yTitle }: Histogram, alternative: string): string {
  const axis = axisFor([0, Math.max(1, ...counts)], 5, true);
  const { left, top, width, height } = PLOT;
  const step = width / counts.length;
  const y = (count: number) => top + height - (along(axis, count) / axis.squares) * height;
  const whole = Array.from({ length: axis.squares + 1 }, (_, i) => i).filter((square) => Number.isInteger(Number(labelAt(axis, square))));
  const grid = whole.map((square): Point[] => [[left, top + height * (1 - square / axis.squares)], [left + width, top + height * (1 - square / axis.squares)]]);
  return figure({ id }, left + width + 8, top + height + 15, alternative, [
    lines(grid, pen.hair),
    ...counts.map((count, i) => (count === 0 ? '' : box(left + i * step + 0.6, y(count), step - 1.2, top + height - y(count), { fill: tint.light }))),
    lines([[[left, top], [left, top + height], [left + width, top + height]]], pen.line),
    ...whole.map((square) => lettering([left - 2, top + height * (1 - square / axis.squares) + 1.1], String(Number(labelAt(axis, square))), { anchor: 'end' })),
    ...edges.map((edge, i) => lettering([left + i * step, top + height + 5], edge, { size: size.small })),
    lettering([left + width / 2, top + height + 11], xTitle),
    lettering([left, top - 2], yTitle, { anchor: 'start' }),
  ]);
}
