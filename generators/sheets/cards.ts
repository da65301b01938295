import { nearestMark } from '../apparatus/decimal.ts';
import type { Ask } from '../experiments/ask.ts';
import { type Setting, nominalResistance } from '../experiments/bridge-plan.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Program } from '../quantities/program.ts';
import type { Instrument, Reading } from '../quantities/step.ts';
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
  /** Where the wire is all that is balanced: some settings of the box inside the window, and where the null point is then expected; in the units of the heads. */
  settings?: { R: Line; l: Line }[];
}

interface Head {
  symbol: Line;
  unit: Line;
}

export interface CardsPage {
  template: 'cards';
  foot: string;
  low: string;
  high: string;
  /** None where no card has settings. */
  heads?: Record<'R' | 'l', Head>;
  cards: Card[];
}

/** Settings on a card: enough to see whether a reading can be right. */
const MOST_SETTINGS = 9;

/** A card for each wire. */
export function cardsPage(asks: readonly Ask[], experiment: Experiment, program: Program, words: SpokenWords): CardsPage {
  const [low, high] = asks[0]!.window;
  const cards = asks.map((ask) => card(ask, experiment, program, words));
  return {
    template: 'cards',
    foot: '',
    low: String(low),
    high: String(high),
    ...(cards.some(({ settings }) => settings) && { heads: { R: head('box', program, words), l: head('scale', program, words) } }),
    cards,
  };
}

function head(instrument: Instrument, program: Program, words: SpokenWords): Head {
  const { id, unit } = firstOn(instrument, program)!;
  return { symbol: symbolLine(program, id, words), unit: unitLine(unit, words) };
}

/** What is first read on an instrument, if anything is. */
const firstOn = (instrument: Instrument, { steps }: Program): Reading | undefined => steps.find((step): step is Reading => step.kind === 'reading' && step.on === instrument);

/** A real piece is believed within two standard deviations of its batch and the limit of its drawing, which enters squared. */
function card(ask: Ask, experiment: Experiment, program: Program, words: SpokenWords): Card {
  const { wire, bench } = ask;
  const X = nominalResistance(wire);
  const usable = firstOn('scale', program) && onlyBalance(ask, experiment);
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
    ...(usable && { settings: evenly(usable, MOST_SETTINGS).map(({ R, l }) => ({ R: quantityLine(R, '', words), l: quantityLine(nearestMark(l, '0.1'), '', words) })) }),
  };
}

/** The settings that balance the wire, where nothing else has to be balanced. */
function onlyBalance(ask: Ask, { wires, plan }: Experiment): readonly Setting[] | undefined {
  if (wires !== 1) return undefined;
  const [only, ...others] = plan(ask).balances;
  return only?.of === undefined && others.length === 0 ? only?.usable : undefined;
}

/** So many of a list, evenly spread, first and last among them; all where there are no more. */
function evenly<T>(list: readonly T[], most: number): T[] {
  if (list.length <= most) return [...list];
  return Array.from({ length: most }, (_, i) => list[Math.round((i * (list.length - 1)) / (most - 1))]!);
}
