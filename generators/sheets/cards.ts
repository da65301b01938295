import { nearestMark } from '../apparatus/decimal.ts';
import type { Ask } from '../experiments/ask.ts';
import type { BridgePlan } from '../experiments/bridge-plan.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, quantityLine } from '../quantities/working.ts';
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
  settings: { R: Line; l: Line }[];
}

export interface CardsPage {
  template: 'cards';
  foot: string;
  low: string;
  high: string;
  cards: Card[];
}

/** A real piece is believed within two standard deviations of its batch and the limit of its drawing, which enters squared. */
export function card(ask: Ask, { X, usable }: BridgePlan, words: SpokenWords): Card {
  const { wire, bench } = ask;
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
    rho: quantityLine(wire.accepted.rho, 'Ω m', words),
    settings: usable.map(({ R, l }) => ({ R: quantityLine(R, 'Ω', words), l: quantityLine(nearestMark(l, '0.1'), 'cm', words) })),
  };
}
