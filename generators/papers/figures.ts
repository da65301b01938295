import type { Drawing } from '../figures/svg.ts';
import { metreScale } from '../figures/metre-scale.ts';
import { screwGauge } from '../figures/screw-gauge.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Written } from '../quantities/step.ts';
import { round } from '../quantities/written.ts';
import type { Direction } from '../questions/direction.ts';

interface Figure {
  /** The givens that are read off it, and how far a reading may lie from the truth, in the given's own unit. */
  latitude: Readonly<Record<string, number>>;
  /** Readings worth drawing; all where left out. */
  suits?(readings: Readings): boolean;
  draw(readings: Readings, id: string, words: FigureWords): Drawing;
}

const number = (readings: Readings, id: string) => Number(readings[id]);

/** A millimetre division of the scale either way. */
const scale: Figure = { latitude: { l: 0.1 }, draw: (readings, id, words) => metreScale({ id, pointerCm: number(readings, 'l') }, words) };

/** Pitch 0.5 mm, 50 divisions: the least count of 0.01 mm that the family is set with. */
const PITCH = 0.5;
const DIVISIONS = 50;
const gauge: Figure = {
  latitude: { m: 0, n: 1 },
  // A wire thinner than half a millimetre leaves nothing to be seen on the main scale.
  suits: (readings) => number(readings, 'm') > 0,
  draw: (readings, id, words) => screwGauge({ id, pitch: PITCH, divisions: DIVISIONS, turns: Math.round(number(readings, 'm') / PITCH), division: number(readings, 'n') }, words),
};

/** Families whose question can show an instrument in place of its readings. */
const FIGURES: Readonly<Record<string, Figure>> = {
  balance: scale,
  'end-corrections': scale,
  kelvin: scale,
  'non-uniform': scale,
  'screw-gauge': gauge,
};

function figureOf({ family, givens }: Direction): Figure | undefined {
  const figure = FIGURES[family.id];
  return figure && Object.keys(figure.latitude).every((id) => givens.includes(id)) && !givens.includes('N') ? figure : undefined;
}

/** The givens that a figure of this direction shows; none where it has no figure. */
export const readsOff = (direction: Direction): string[] => Object.keys(figureOf(direction)?.latitude ?? {});

/** Whether a figure of these readings is worth drawing. */
export const suitsFigure = (direction: Direction, readings: Readings): boolean => figureOf(direction)?.suits?.(readings) ?? true;

/** The figure of a direction that has one. */
export const drawFigure = (direction: Direction, readings: Readings, id: string, words: FigureWords): Drawing => figureOf(direction)!.draw(readings, id, words);

/** The readings as they may be taken off the figure: each as far off as it may be, either way. */
export function readOff(direction: Direction, readings: Readings): Readings[] {
  const { latitude } = figureOf(direction)!;
  return Object.entries(latitude).flatMap(([id, slack]) => (slack === 0 ? [] : [-slack, slack].map((off) => ({ ...readings, [id]: moved(String(readings[id]), off) }))));
}

function moved(value: Written, off: number): Written {
  return round(Number(value) + off, { decimals: 1 }, 'even');
}

/** How far each reading off the figure may lie from the truth. */
export const latitudeOf = (direction: Direction): Readonly<Record<string, number>> => figureOf(direction)!.latitude;
