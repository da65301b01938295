import { size, words } from './lettering.ts';
import { box, lines, pen, shape, tint, type Point } from './svg.ts';

/** Where the parts of the bridge stand in its circuit diagram, in mm. */
export const place = {
  wire: 60,
  lengths: 79,
  supply: 92,
  start: [12.5, 50],
  end: [107.5, 50],
  centre: [60, 25.5],
  gap: { left: [[29.5, 25.5], [48.5, 25.5]], right: [[71.5, 25.5], [90.5, 25.5]] },
} as const satisfies Record<string, unknown>;

const strip = { top: 23, bottom: 28, leg: 64 };

/** The place on the drawn wire of a distance from its left end, 0.9 mm for every cm. */
export function onWire(cm: number): number {
  return 15 + 0.9 * cm;
}

/** Where copper strips lie above the wire: how far the arms of the two L-shaped ones reach, and the straight ones between. */
export interface Strips {
  arms: readonly [left: number, right: number];
  between: readonly (readonly [from: number, to: number])[];
}

const twoGaps: Strips = { arms: [32, 88], between: [[46, 74]] };

/** Seen from above: the wooden board, its copper strips (three where left out, with two gaps), the wire and its scale. */
export function bridgeBoard({ arms: [left, right], between }: Strips = twoGaps): string {
  const copper = { fill: tint.light, 'stroke-width': pen.thin };
  const { top, bottom, leg } = strip;
  return [
    box(7, 20, 106, 64, { rx: 0.8, 'stroke-width': pen.thin }),
    shape([[10, top], [left, top], [left, bottom], [15, bottom], [15, leg], [10, leg]], { ...copper, 'data-part': 'left-strip' }),
    shape([[110, top], [right, top], [right, bottom], [105, bottom], [105, leg], [110, leg]], { ...copper, 'data-part': 'right-strip' }),
    ...between.map(([from, to]) => box(from, top, to - from, bottom - top, copper)),
    lines([[[12.5, place.wire], [107.5, place.wire]]], pen.line, { 'data-part': 'wire' }),
    ...scale(),
  ].join('');
}

function scale(): string[] {
  const top = 65.5;
  const marks = Array.from({ length: 101 }, (_, cm): Point[] => [
    [onWire(cm), top],
    [onWire(cm), top + (cm % 10 === 0 ? 2.8 : cm % 5 === 0 ? 2.1 : 1.4)],
  ]);
  const numbers = Array.from({ length: 11 }, (_, i) => words([onWire(10 * i), top + 6.2], String(10 * i), { size: size.small }));
  return [box(11, top, 98, 7.4, { 'stroke-width': pen.hair }), lines(marks, pen.hair, { 'data-part': 'marks' }), ...numbers];
}
