import type { Drawing } from '../figures/svg.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Written } from '../quantities/step.ts';
import { unit } from '../quantities/unit.ts';
import { round } from '../quantities/written.ts';
import type { Direction } from '../questions/direction.ts';
import type { Choice } from '../questions/family.ts';
import { plainText } from '../questions/plain-text.ts';
import * as circuits from './circuits.ts';
import * as instruments from './instruments.ts';

/** What a drawing may know of a question. */
export interface Values {
  choice: Choice;
  has(id: string): boolean;
  /** A given in its own unit. */
  number(id: string): number;
  /** 'P = 12 Ω' of a given, 'P' of anything else. */
  label(id: string): string;
}

export interface Figure {
  /** The givens that can be read off it, and how far a reading may lie from the truth, in the given's own unit. */
  latitude: Readonly<Record<string, number>>;
  /** The same where it goes by the values. */
  latitudeOf?(values: Values): Readonly<Record<string, number>>;
  /** How many of them make a drawing worth while; one where left out. */
  least?: number;
  /** Readings worth drawing; all where left out. */
  suits?(values: Values): boolean;
  draw(values: Values, id: string, words: FigureWords): Drawing;
}

/** What shows the readings or the circuit of a question, by family. */
const FIGURES: Readonly<Record<string, Figure>> = {
  balance: instruments.scale,
  'end-corrections': instruments.scale,
  kelvin: instruments.scale,
  'non-uniform': instruments.scale,
  'screw-gauge': instruments.gauge,
  'resistivity-bridge': instruments.box('R'),
  'error-of-x': instruments.box('R'),
  'best-choice': instruments.box('S1'),
  temperature: instruments.warmth,
  gradient: instruments.slope,
  series: circuits.joined('series'),
  shunt: circuits.joined('parallel'),
  'both-gaps': circuits.bothGaps,
  currents: circuits.atBalance,
  'off-balance': circuits.offBalance,
  'carey-foster': circuits.fourGaps,
  wheatstone: circuits.diamond,
};

/** Symbols that only another figure of the family would show. */
const NOT_WITH: Readonly<Record<string, string>> = { 'screw-gauge': 'N' };

function figureOf({ family, givens }: Direction): Figure | undefined {
  const figure = FIGURES[family.id];
  const without = NOT_WITH[family.id];
  return figure && !(without !== undefined && givens.includes(without)) ? figure : undefined;
}

/** The givens that a figure of this direction shows; none where it has no figure. */
export function readsOff(direction: Direction): string[] {
  const figure = figureOf(direction);
  const shown = figure ? SHOWN.get(figure)!.filter((id) => direction.givens.includes(id)) : [];
  return shown.length >= (figure?.least ?? 1) ? shown : [];
}

const SHOWN = new Map(Object.values(FIGURES).map((figure) => [figure, Object.keys(figure.latitudeOf?.({ choice: {}, has: () => true, number: () => 1, label: (id) => id }) ?? figure.latitude)]));

function valuesOf({ body, choice, givens }: Direction, readings: Readings): Values {
  const symbol = (id: string) => plainText(body.quantities[id]!.tex ?? id);
  return {
    choice,
    has: (id) => id in body.quantities && givens.includes(id),
    number: (id) => Number(readings[id]),
    label: (id) => (givens.includes(id) ? `${symbol(id)} = ${String(readings[id])} ${plainText(unit(body.quantities[id]!.unit).tex)}` : symbol(id)),
  };
}

/** Whether a figure of these readings is worth drawing. */
export const suitsFigure = (direction: Direction, readings: Readings): boolean => figureOf(direction)?.suits?.(valuesOf(direction, readings)) ?? true;

/** The figure of a direction that has one. */
export const drawFigure = (direction: Direction, readings: Readings, id: string, words: FigureWords): Drawing => figureOf(direction)!.draw(valuesOf(direction, readings), id, words);

/** How far each reading off the figure may lie from the truth. */
export function latitudeOf(direction: Direction, readings: Readings): Readonly<Record<string, number>> {
  const figure = figureOf(direction)!;
  return figure.latitudeOf?.(valuesOf(direction, readings)) ?? figure.latitude;
}

/** The readings as they may be taken off the figure: each as far off as it may be, either way. */
export function readOff(direction: Direction, readings: Readings): Readings[] {
  const latitude = latitudeOf(direction, readings);
  return readsOff(direction).flatMap((id) => (latitude[id] === 0 ? [] : [-latitude[id]!, latitude[id]!].map((off) => ({ ...readings, [id]: moved(String(readings[id]), off) }))));
}

/** Six figures keep what a tenth of a division is. */
function moved(value: Written, off: number): Written {
  return round(Number(value) + off, { figures: 6 }, 'even');
}
