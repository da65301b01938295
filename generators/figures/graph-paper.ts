import { fill } from './fill.ts';
import { figure, lines, pen, tint, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords } from './words.ts';

export interface Paper extends Frame {
  /** Squares of 10 mm across and up; 16 × 12 when left out. */
  squares?: readonly [across: number, up: number];
}

/** Room round the grid for half a line's width. */
const rim = 0.5;

/** Empty millimetre paper, on which the student chooses axes and scales. */
export function graphPaper(paper: Paper, words: FigureWords): Drawing {
  const [across, up] = paper.squares ?? [16, 12];
  const seen = fill(words.graph.paper, { width: 10 * across, height: 10 * up });
  return { svg: figure(paper, 10 * across + 2 * rim, 10 * up + 2 * rim, seen, [grid([rim, rim], across, up)]), seen };
}

/** Millimetre lines, stronger every 5 and 10 mm, from the upper left corner; one path for each strength. */
export function grid(corner: Point, across: number, up: number): string {
  const every = (mm: number, but: number) => [
    ...ruled(10 * across, mm, but).map((x): Point[] => [[corner[0] + x, corner[1]], [corner[0] + x, corner[1] + 10 * up]]),
    ...ruled(10 * up, mm, but).map((y): Point[] => [[corner[0], corner[1] + y], [corner[0] + 10 * across, corner[1] + y]]),
  ];
  return [
    lines(every(1, 5), 0.1, { stroke: tint.fine, 'data-part': 'fine' }),
    lines(every(5, 10), 0.15, { stroke: tint.fine }),
    lines(every(10, Infinity), pen.thin, { stroke: tint.heavy, 'data-part': 'heavy' }),
  ].join('');
}

function ruled(length: number, every: number, but: number): number[] {
  return Array.from({ length: length / every + 1 }, (_, i) => i * every).filter((place) => but === Infinity || place % but !== 0);
}
