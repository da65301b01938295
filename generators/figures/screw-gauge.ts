import { fill } from './fill.ts';
import { size, words as letters } from './lettering.ts';
import { figure, lines, pen, shape, tint, box, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords, ScrewGaugeWords } from './words.ts';

export interface ScrewGaugeView extends Frame {
  /** Advance in one turn, in mm: 0.5 or 1. */
  pitch: number;
  /** Divisions on the thimble. */
  divisions: number;
  /** Whole turns from the zero mark; −1 with the jaws closed and the thimble's edge past the zero mark. */
  turns: number;
  /** Division of the thimble at the reference line, 0 ≤ division < divisions. */
  division: number;
}

/** The drawing, in mm: 1 mm of the sleeve's scale is drawn 6 mm long. */
const enlarged = 6;
const axis = 25;
const edge = 52;
const end = 89;
const radius = { sleeve: 16, edge: 18, thimble: 23 };
const bevel = 13;
const sleeveStart = 3;

/**
 * Sleeve and thimble of a screw gauge, six times as large as life; 90 × 50 mm.
 * RangeError for what no such gauge can show.
 */
export function screwGauge(gauge: ScrewGaugeView, words: FigureWords): Drawing {
  check(gauge);
  const seen = inWords(gauge, words.screwGauge);
  const parts = [
    box(sleeveStart, axis - radius.sleeve, edge - sleeveStart + 2, 2 * radius.sleeve, { 'data-part': 'sleeve' }),
    ...sleeve(gauge),
    ...thimble(gauge),
  ];
  return { svg: figure(gauge, 90, 50, seen, parts), seen };
}

function check({ pitch, divisions, turns, division }: ScrewGaugeView): void {
  if (pitch !== 0.5 && pitch !== 1) throw new RangeError(`a screw gauge of pitch ${pitch} mm is not drawn: take 0.5 or 1`);
  if (!Number.isInteger(turns) || turns < -1) throw new RangeError(`${turns} is not a number of turns from −1 upwards`);
  if (!(division >= 0 && division < divisions)) throw new RangeError(`division ${division} is not on a thimble of ${divisions}`);
}

/** How far the thimble's edge stands from the zero mark, in mm. */
function opening({ pitch, divisions, turns, division }: ScrewGaugeView): number {
  return pitch * (turns + division / divisions);
}

/** Whole millimetres whose marks lie on the drawn sleeve and are not covered. */
function uncovered(gauge: ScrewGaugeView): number[] {
  const last = Math.floor(opening(gauge) + 1e-9);
  const first = Math.max(0, Math.ceil(opening(gauge) - (edge - sleeveStart - 3) / enlarged));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}

function halves(gauge: ScrewGaugeView): number[] {
  if (gauge.pitch === 1) return [];
  return uncovered(gauge).map((mm) => mm + 0.5).filter((mm) => mm <= opening(gauge) + 1e-9);
}

function sleeve(gauge: ScrewGaugeView): string[] {
  const at = (mm: number) => edge - enlarged * (opening(gauge) - mm);
  const above = uncovered(gauge).map((mm): Point[] => [[at(mm), axis], [at(mm), axis - (mm % 5 === 0 ? 6 : 4.4)]]);
  const below = halves(gauge).map((mm): Point[] => [[at(mm), axis], [at(mm), axis + 4.4]]);
  const numbered = uncovered(gauge).filter((mm) => mm % 5 === 0);
  const shown = opening(gauge) < 0 ? [0] : numbered;
  return [
    letters([sleeveStart + 3, axis + 9], 'mm', { size: size.small, anchor: 'start' }),
    lines([[[sleeveStart, axis], [edge, axis]]], pen.thin, { 'data-part': 'reference' }),
    lines(above, pen.thin, { 'data-part': 'main-marks' }),
    lines(below, pen.thin, { 'data-part': 'half-marks' }),
    ...shown.map((mm) => letters([Math.min(at(mm), edge) - 0.6, axis - 6.8], String(mm), { anchor: 'end', part: 'main-number' })),
  ];
}

function thimble({ divisions, division }: ScrewGaugeView): string[] {
  const angle = (line: number) => (2 * Math.PI * (line - division)) / divisions;
  const at = (line: number, along: number): Point => {
    const r = radius.edge + ((radius.thimble - radius.edge) * along) / bevel;
    return [edge + along, axis - r * Math.sin(angle(line))];
  };
  const every = divisions === 100 ? 10 : 5;
  const inSight = lineNumbers(divisions, division);
  const marks = inSight.map((line): Point[] => [at(line, 0), at(line, line % every === 0 ? 7 : line % 5 === 0 ? 5.6 : 4.4)]);
  const numbered = inSight.filter((line) => line % every === 0);
  return [
    outline(),
    lines(marks, pen.thin, { 'data-part': 'thimble-marks' }),
    ...numbered.map((line) => {
      const [x, y] = at(line, 8);
      return letters([x, y + 0.33 * size.small], String((line + divisions) % divisions), { size: size.small, anchor: 'start', part: 'thimble-number' });
    }),
    lines([[[edge, axis - radius.edge], [edge, axis + radius.edge]]], pen.thin, { 'data-part': 'thimble-edge' }),
  ];
}

/** Lines on the near side, up to 0.95 rad from the reference line, counted on past the zero both ways. */
function lineNumbers(divisions: number, division: number): number[] {
  const reach = Math.floor((0.95 * divisions) / (2 * Math.PI));
  return Array.from({ length: 2 * reach + 1 }, (_, i) => Math.round(division) - reach + i);
}

function outline(): string {
  const { edge: r, thimble: R } = radius;
  const corners: Point[] = [[edge, axis - r], [edge + bevel, axis - R], [end, axis - R], [end, axis + R], [edge + bevel, axis + R], [edge, axis + r]];
  const grip = Array.from({ length: 19 }, (_, i) => axis - R * Math.sin((i - 9) / 6.2));
  return (
    shape(corners) +
    box(end - 12, axis - R, 12, 2 * R, { fill: tint.pale }) +
    lines(grip.map((y): Point[] => [[end - 12, y], [end, y]]), pen.hair)
  );
}

function inWords(gauge: ScrewGaugeView, words: ScrewGaugeWords): string {
  const { divisions, division } = gauge;
  const numbers = lineNumbers(divisions, division).map((line) => (line + divisions) % divisions);
  return fill(words.seen, {
    main: mainInWords(gauge, words),
    circular: circularInWords(gauge, words),
    first: numbers[0]!,
    last: numbers.at(-1)!,
  });
}

function mainInWords(gauge: ScrewGaugeView, words: ScrewGaugeWords): string {
  const last = uncovered(gauge).at(-1);
  if (last === undefined) return words.covered;
  const n = last % 5;
  const whole = fill(n === 0 ? words.atNumber : words.atMark, { n, number: last - n });
  if (gauge.pitch === 1) return whole;
  return whole + (halves(gauge).includes(last + 0.5) ? words.half : words.noHalf);
}

function circularInWords({ divisions, division }: ScrewGaugeView, words: ScrewGaugeWords): string {
  const every = divisions === 100 ? 10 : 5;
  const nearest = Math.round(division) % divisions;
  const n = nearest % every;
  return fill(n === 0 ? words.circularNumber : words.circularLine, { n, number: nearest - n });
}
