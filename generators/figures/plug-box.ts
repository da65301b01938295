import type { Written } from '../quantities/step.ts';
import { fill } from './fill.ts';
import { size, words as letters } from './lettering.ts';
import { box, circle, figure, lines, pen, tint, type Drawing, type Frame, type Point } from './svg.ts';
import type { FigureWords } from './words.ts';

export interface PlugBoxView extends Frame {
  /** Values engraved at the holes, in Ω, in the order in which the coils follow each other. */
  plugs: readonly Written[];
  /** Places in that list (from 0) whose plug is taken out. */
  out: readonly number[];
}

const perRow = 5;
const rowHeight = 21;
const block = { first: 7.6, pitch: 16, width: 14.4, height: 9 };

/** A plug resistance box seen from above; 108 mm wide, 21 mm high for every row of five holes and 13 mm more. */
export function plugBox(view: PlugBoxView, words: FigureWords): Drawing {
  const { plugs } = view;
  const out = view.out.map((place) => valueAt(plugs, place));
  const rows = Math.ceil(plugs.length / perRow);
  const height = rows * rowHeight + 13;
  const seen = fill(out.length === 0 ? words.plugBox.none : words.plugBox.seen, { all: plugs.join(', '), out: out.join(', ') });
  const parts = [
    box(0.3, 0.3, 107.4, height - 0.6, { rx: 1.5 }),
    ...Array.from({ length: rows }, (_, row) => brass(row, holesIn(row, plugs.length), row < rows - 1)),
    ...plugs.map((value, i) => hole(i, value, view.out.includes(i))),
    screw(blockAt(0, 0)),
    screw(blockAt(rows - 1, holesIn(rows - 1, plugs.length))),
    ...legend(height - 4.4, words.plugBox),
  ];
  return { svg: figure(view, 108, height, seen, parts), seen };
}

function valueAt(plugs: readonly Written[], place: number): Written {
  const value = plugs[place];
  if (value === undefined) throw new RangeError(`there is no plug ${place} in a box of ${plugs.length}`);
  return value;
}

function holesIn(row: number, plugs: number): number {
  return Math.min(perRow, plugs - row * perRow);
}

/** Upper left corner of a block. Rows run to the right and back in turn, so that the coils follow each other without a jump. */
function blockAt(row: number, i: number): Point {
  const column = row % 2 === 0 ? i : perRow - i;
  return [block.first + block.pitch * column, 5.5 + rowHeight * row];
}

/** The brass blocks of one row, one more than holes, and the bar that leads to the next row. */
function brass(row: number, holes: number, more: boolean): string {
  const blocks = Array.from({ length: holes + 1 }, (_, i) => box(...blockAt(row, i), block.width, block.height, { fill: tint.light }));
  const [x, y] = blockAt(row, holes);
  const bar = more ? box(x + 3.2, y + block.height, 8, rowHeight - block.height, { fill: tint.light }) : '';
  return bar + blocks.join('');
}

/** A hole between two blocks, with its plug or without, and its value engraved below. */
function hole(i: number, value: Written, out: boolean): string {
  const row = Math.floor(i / perRow);
  const [one, two] = [blockAt(row, i % perRow), blockAt(row, (i % perRow) + 1)];
  const x = (one[0] + two[0] + block.width) / 2;
  const y = one[1] + block.height / 2;
  const engraved = letters([x, y + block.height / 2 + 4.6], value, { size: size.text, part: 'value' });
  return (out ? open([x, y], 2.3, 'open') : plug([x, y], 3, 'plug')) + engraved;
}

function open(at: Point, radius: number, part?: string): string {
  return circle(at, radius, { 'data-part': part });
}

/** The black head of a plug with its grip. */
function plug(at: Point, radius: number, part?: string): string {
  const [x, y] = at;
  const grip = 0.62 * radius;
  return circle(at, radius, { fill: '#000', 'data-part': part }) + lines([[[x, y - grip], [x, y + grip]]], 0.3 * radius, { stroke: '#fff', 'stroke-linecap': 'round' });
}

/** A binding screw in the middle of a block. */
function screw([x, y]: Point): string {
  const at: Point = [x + block.width / 2, y + block.height / 2];
  return circle(at, 1.7, { 'stroke-width': pen.line }) + circle(at, 0.9, { 'stroke-width': pen.line });
}

function legend(y: number, words: FigureWords['plugBox']): string[] {
  const beside = { size: size.small, anchor: 'start' as const };
  return [
    plug([10.5, y - 1], 1.9),
    letters([14.5, y], words.in, beside),
    open([40.5, y - 1], 1.6),
    letters([44.5, y], words.out, beside),
    letters([100, y], words.unit, { size: size.small, anchor: 'end' }),
  ];
}
