import { resistor, type ResistorSymbol } from './electrical.ts';
import { size, symbols } from './lettering.ts';
import { lines, pen, type Point } from './svg.ts';

/** What lies between two nodes: one resistor, or two in series or in parallel, each with its label. */
export interface Arm {
  join: 'one' | 'series' | 'parallel';
  labels: readonly string[];
}

/** How far a second resistor in parallel, and a label, stand off, in mm. */
const beside = { resistor: 10, label: 5.2 };

/** An arm drawn along the straight way between two nodes, its labels on the side that `out` (1 or −1) points to, seen along it to the right. */
export function arm(from: Point, to: Point, { join, labels }: Arm, out: 1 | -1, symbol: ResistorSymbol): string[] {
  const way = wayOf(from, to);
  const [first = '', second = ''] = labels;
  if (join === 'one') return [resistor(from, to, symbol), label(way, 0.5, out, first)];
  if (join === 'series') return [resistor(from, way.at(0.5), symbol), resistor(way.at(0.5), to, symbol), label(way, 0.25, out, first), label(way, 0.75, out, second)];
  const aside = out * beside.resistor;
  const [left, right] = [0.2, 0.8];
  return [
    resistor(from, to, symbol),
    label(way, 0.5, out === 1 ? -1 : 1, first),
    lines([[way.at(left), way.at(left, aside)], [way.at(right, aside), way.at(right)]], pen.line),
    resistor(way.at(left, aside), way.at(right, aside), symbol),
    label(way, 0.5, out, second, beside.resistor),
  ];
}

type Way = ReturnType<typeof wayOf>;

function label(way: Way, share: number, out: 1 | -1, text: string, off = 0): string {
  const [x, y] = way.at(share, out * (off + beside.label));
  const sideways = out * way.normal[0];
  const anchor = sideways > 0.3 ? 'start' : sideways < -0.3 ? 'end' : 'middle';
  // The letters' own height lies above the baseline.
  return symbols([x, y + size.text * (out * way.normal[1] > 0 ? 0.6 : 0.1)], text, { anchor });
}

function wayOf([x1, y1]: Point, [x2, y2]: Point) {
  const length = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
  const normal: Point = [-(y2 - y1) / length, (x2 - x1) / length];
  return { normal, at: (share: number, aside = 0): Point => [x1 + share * (x2 - x1) + aside * normal[0], y1 + share * (y2 - y1) + aside * normal[1]] };
}
