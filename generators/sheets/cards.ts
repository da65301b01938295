import { nearestMark } from '../apparatus/decimal.ts';
import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Program } from '../quantities/program.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, quantityLine, symbolLine } from '../quantities/working.ts';
import { scientific } from '../quantities/written.ts';
import { unitLine } from './record.ts';
import { roughly } from './rough.ts';

/** What a teacher needs beside a wire when the readings are really taken. */
export interface Card {
  material: string;
  gauge: string;
  length: Line;
  /** Expected resistance, and from here to there once batch and drawing of the wire are allowed for. */
  X: Line;
  low: Line;
  high: Line;
  diameter: Line;
  rho: Line;
  /** Some settings of the box inside the window, and where the null point is then expected; in the units of the heads. */
  settings: { R: Line; l: Line }[];
}

export interface CardsPage {
  template: 'cards';
  foot: string;
  low: string;
  high: string;
  heads: Record<'R' | 'l', { symbol: Line; unit: Line }>;
  cards: Card[];
}

/** Settings on a card: enough to see whether a reading can be right. */
const MOST_SETTINGS = 9;

/** A card for each wire. */
export function cardsPage(asks: readonly Ask[], experiment: Experiment, program: Program, words: SpokenWords): CardsPage {
  const head = (id: string) => ({ symbol: symbolLine(program, id, words), unit: unitLine(program.step(id).unit, words) });
  const [low, high] = asks[0]!.window;
  return {
    template: 'cards',
    foot: '',
    low: String(low),
    high: String(high),
    heads: { R: head('R'), l: head('l') },
    cards: asks.map((ask) => card(ask, experiment, words)),
  };
}

/** A real piece is believed within two standard deviations of its batch and the limit of its drawing, which enters squared. */
function card(ask: Ask, experiment: Experiment, words: SpokenWords): Card {
  const { wire, bench } = ask;
  const { X, usable } = experiment.plan(ask).balances[0]!;
  const spread = 2 * bench.wire.batchSpread + 2 * bench.wire.diameterTolerance;
  const ohms = (value: number) => roughly(value, 'Ω', words, 3);
  return {
    material: wire.accepted.material,
    gauge: wire.gauge,
    length: quantityLine(String(wire.length), 'cm', words),
    X: ohms(X),
    low: roughly(X * (1 - spread), '', words, 3),
    high: ohms(X * (1 + spread)),
    diameter: quantityLine(nearestMark(wire.diameter, '0.001'), 'mm', words),
    rho: quantityLine(scientific(wire.accepted.rho), 'Ω m', words),
    settings: evenly(usable, MOST_SETTINGS).map(({ R, l }) => ({ R: quantityLine(R, '', words), l: quantityLine(nearestMark(l, '0.1'), '', words) })),
  };
}

/** So many of a list, evenly spread, first and last among them; all where there are no more. */
function evenly<T>(list: readonly T[], most: number): T[] {
  if (list.length <= most) return [...list];
  return Array.from({ length: most }, (_, i) => list[Math.round((i * (list.length - 1)) / (most - 1))]!);
}
