import { element, escape, type Point } from './svg.ts';

/** Sizes of letters in mm; 3.4 mm is about 9.6 pt. */
export const size = { small: 3, text: 3.4, large: 4 } as const;

interface Manner {
  size?: number;
  anchor?: 'start' | 'middle' | 'end';
  /** Degrees anticlockwise about the place. */
  turn?: number;
  part?: string;
}

/** Words, set upright; the place is on the baseline. */
export function words(at: Point, text: string, manner: Manner = {}): string {
  return set(at, escape(text), manner);
}

/**
 * A symbol or expression: single letters sloping, as ISO 80000-1 asks for quantities, all else upright,
 * also a difference's Δ and a unit after a number and a space.
 */
export function symbols(at: Point, expression: string, manner: Manner = {}): string {
  return set(at, sloped(expression), manner);
}

/** A quantity with its unit: 'l/cm', as on an axis or at the head of a column. */
export function quantityIn(at: Point, quantity: string, unit: string, manner: Manner = {}): string {
  return set(at, unit === '' ? sloped(quantity) : `${sloped(quantity)} / ${escape(unit)}`, manner);
}

/** Lowers a place by what puts the middle of capitals and figures there instead of the baseline. */
export function centred([x, y]: Point, letters: number = size.text): Point {
  return [x, y + 0.33 * letters];
}

function sloped(expression: string): string {
  return escape(expression).replace(/(?<![\p{L}&]|\d )(Δ?)(?![ΩΔ])(\p{L})(?!\p{L})/gu, '$1<tspan font-style="italic">$2</tspan>');
}

function set([x, y]: Point, content: string, { size: letters = size.text, anchor = 'middle', turn, part }: Manner): string {
  const place = {
    x,
    y,
    'font-size': letters,
    'text-anchor': anchor === 'start' ? undefined : anchor,
    transform: turn === undefined ? undefined : `rotate(${-turn} ${x} ${y})`,
    'data-part': part,
  };
  return element('text', place, content);
}
