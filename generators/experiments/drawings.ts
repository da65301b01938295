import { plugsOut } from '../apparatus/box.ts';
import { metreScale } from '../figures/metre-scale.ts';
import { plugBox } from '../figures/plug-box.ts';
import { rule } from '../figures/rule.ts';
import { screwGauge } from '../figures/screw-gauge.ts';
import type { Drawing } from '../figures/svg.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Written } from '../quantities/step.ts';

/** Instruments that a sheet can show in place of the numbers; an order names them. */
export const DRAWABLE = ['scale', 'plugs', 'gauge', 'rule'] as const;
export type Drawable = (typeof DRAWABLE)[number];

/** Readings that are taken off a drawing, and how far the reading may lie from the truth, in its unit. */
export type DrawnReadings = Record<string, number>;

/** One picture to be read. */
export interface DrawnReading {
  instrument: string;
  /** The readings that it gives. */
  gives: string[];
  /** Row of the table that they belong to, from 0; single readings have none. */
  row?: number;
  drawing: Drawing;
}

interface Instrument {
  /** What it is called in content, where a drawing needs its own caption. */
  caption: string;
  gives: string[];
  draw(read: (id: string) => Written, frame: { id: string }, form: Record<string, string>, words: FigureWords): Drawing;
}

/** Where the left terminal is laid on the rule, in cm: a student who does not start from zero must subtract. */
const LAID_AT = 1.4;

const turns = (main: Written, pitch: Written) => Math.round(Number(main) / Number(pitch));

const instruments: Record<Drawable, Instrument[]> = {
  scale: [{ caption: 'metre scale', gives: ['l'], draw: (read, frame, _, words) => metreScale({ ...frame, pointerCm: Number(read('l')) }, words) }],
  plugs: [
    {
      caption: 'plug box',
      gives: ['R'],
      draw(read, frame, form, words) {
        const plugs = form['plugs']!.split(' ');
        return plugBox({ ...frame, plugs, out: plugsOut(plugs, read('R')) }, words);
      },
    },
  ],
  gauge: [
    {
      caption: 'screw gauge closed',
      gives: ['n0'],
      draw: (read, frame, form, words) => gauge(read, frame, form['zero'] === 'negative' ? -1 : 0, read('n0'), words),
    },
    {
      caption: 'screw gauge',
      gives: ['msr', 'n'],
      draw: (read, frame, _, words) => gauge(read, frame, turns(read('msr'), read('pitch')), read('n'), words),
    },
  ],
  rule: [{ caption: 'rule', gives: ['L'], draw: (read, frame, _, words) => rule({ ...frame, leftCm: LAID_AT, rightCm: (10 * LAID_AT + 10 * Number(read('L'))) / 10 }, words) }],
};

function gauge(read: (id: string) => Written, frame: { id: string }, turned: number, division: Written, words: FigureWords): Drawing {
  const pitch = Number(read('pitch')) === 1 ? 1 : 0.5;
  return screwGauge({ ...frame, pitch, divisions: Number(read('N')), turns: turned, division: Number(division) }, words);
}

/** The latitude of every reading that these instruments give: what the order states for it, or none. */
export function drawnReadings(chosen: readonly Drawable[], latitude: Record<string, number>): DrawnReadings {
  const ids = chosen.flatMap((name) => instruments[name].flatMap(({ gives }) => gives));
  return Object.fromEntries(ids.map((id) => [id, latitude[id] ?? 0]));
}

/** The pictures of a sheet, one for each reading or row that is drawn, in the order of the instruments. */
export function drawings(readings: Readings, form: Record<string, string>, drawn: DrawnReadings, id: string, words: FigureWords): DrawnReading[] {
  return Object.values(instruments)
    .flat()
    .filter(({ gives }) => gives.some((reading) => reading in drawn))
    .flatMap(({ caption, gives, draw }) => {
      const column = readings[gives[0]!]!;
      const read = (row: number) => (name: string) => [readings[name]!].flat().at([readings[name]!].flat().length === 1 ? 0 : row)!;
      const one = (row: number) => draw(read(row), { id: `${id}-${gives[0]}-${row}` }, form, words);
      if (!Array.isArray(column)) return [{ instrument: caption, gives, drawing: one(0) }];
      return column.map((_, row) => ({ instrument: caption, gives, row, drawing: one(row) }));
    });
}
