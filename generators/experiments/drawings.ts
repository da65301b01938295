import { plugsOut } from '../apparatus/box.ts';
import { dial } from '../figures/dial.ts';
import { metreScale } from '../figures/metre-scale.ts';
import { plugBox } from '../figures/plug-box.ts';
import { rule } from '../figures/rule.ts';
import { screwGauge } from '../figures/screw-gauge.ts';
import { thermometer } from '../figures/thermometer.ts';
import type { Drawing } from '../figures/svg.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Readings } from '../quantities/evaluate.ts';
import type { Instrument, Reading, Step, Written } from '../quantities/step.ts';
import type { Decided } from './layout.ts';

/** Instruments that a sheet can show in place of the numbers; an order names them. */
export const DRAWABLE = ['scale', 'plugs', 'gauge', 'rule', 'dial', 'thermometer'] as const;
export type Drawable = (typeof DRAWABLE)[number];

/** What a drawing needs of a sheet; `drawn` names the readings that are taken off drawings. */
export interface DrawnSheet {
  readings: Readings;
  form: Record<string, string>;
  drawn: Record<string, number>;
  /** Choices of the form that readings decide. */
  decided: readonly Pick<Decided, 'choice' | 'by'>[];
}

/** One picture to be read. */
export interface DrawnReading {
  instrument: string;
  /** The readings that it gives. */
  gives: string[];
  /** Row of the table that they belong to, from 0; single readings have none. */
  row?: number;
  drawing: Drawing;
}

interface Picture {
  /** What it is called in content, where a drawing needs its own caption. */
  caption: string;
  /** The instruments whose readings it gives; the first decides how many pictures there are. */
  shows: Instrument[];
  draw(read: Reader, frame: { id: string }, form: Record<string, string>, words: FigureWords): Drawing;
}

/** The written value of a reading of this row on an instrument, or of a quantity by its name. */
interface Reader {
  on(instrument: Instrument): Written;
  of(id: string): Written;
  /** The choice of the form that the first of its readings decides. */
  decides(): string | undefined;
}

/** Where the left terminal is laid on the rule, in cm: a student who does not start from zero must subtract. */
const LAID_AT = 1.4;

/** Divisions on each side of the galvanometer's zero; common practice, no source. */
const LAST_MARK = 30;

const turns = (main: Written, pitch: Written) => Math.round(Number(main) / Number(pitch));

const pictures: Record<Drawable, Picture[]> = {
  scale: [{ caption: 'metre scale', shows: ['scale'], draw: (read, frame, _, words) => metreScale({ ...frame, pointerCm: Number(read.on('scale')) }, words) }],
  plugs: [
    {
      caption: 'plug box',
      shows: ['box'],
      draw(read, frame, form, words) {
        const plugs = form['plugs']!.split(' ');
        return plugBox({ ...frame, plugs, out: plugsOut(plugs, read.on('box')) }, words);
      },
    },
  ],
  gauge: [
    {
      caption: 'screw gauge closed',
      shows: ['closed jaws'],
      draw: (read, frame, _, words) => gauge(read, frame, read.decides() === 'negative' ? -1 : 0, read.on('closed jaws'), words),
    },
    {
      caption: 'screw gauge',
      shows: ['circular scale', 'main scale'],
      draw: (read, frame, _, words) => gauge(read, frame, turns(read.on('main scale'), read.of('pitch')), read.on('circular scale'), words),
    },
  ],
  rule: [
    {
      caption: 'rule',
      shows: ['rule'],
      draw: (read, frame, _, words) => rule({ ...frame, leftCm: LAID_AT, rightCm: (10 * LAID_AT + 10 * Number(read.on('rule'))) / 10 }, words),
    },
  ],
  thermometer: [{ caption: 'thermometer', shows: ['thermometer'], draw: (read, frame, _, words) => thermometer({ ...frame, celsius: Number(read.on('thermometer')) }, words) }],
  dial: [
    {
      caption: 'dial',
      shows: ['galvanometer'],
      draw: (read, frame, _, words) => dial({ ...frame, deflection: againstStop(Number(read.on('galvanometer'))) }, words),
    },
  ],
};

/** The last mark of the dial stands for all that is more: the needle is then at its stop. */
function againstStop(deflection: number): number {
  return Math.abs(deflection) < LAST_MARK ? deflection : 2 * deflection;
}

function gauge(read: Reader, frame: { id: string }, turned: number, division: Written, words: FigureWords): Drawing {
  const pitch = Number(read.of('pitch')) === 1 ? 1 : 0.5;
  return screwGauge({ ...frame, pitch, divisions: Number(read.of('N')), turns: turned, division: Number(division) }, words);
}

/** The instruments that a drawn thing stands for. */
export function drawnOn(name: Drawable): Instrument[] {
  return [...new Set(pictures[name].flatMap(({ shows }) => shows))];
}

/** The pictures of a sheet, one for each reading or row that is drawn, in the order of the instruments. */
export function drawings(steps: readonly Step[], sheet: DrawnSheet, id: string, words: FigureWords): DrawnReading[] {
  const { readings, form, drawn } = sheet;
  const taken = steps.filter((step) => step.kind === 'reading' && step.id in drawn) as Reading[];
  return Object.values(pictures)
    .flat()
    .flatMap(({ caption, shows, draw }) => {
      const [first, ...others] = shows;
      const leads = taken.filter(({ on }) => on === first);
      return rowByRow(readings, leads).flatMap(({ lead, row }) => {
        const beside = others.map((instrument) => taken.find(({ on, per }) => on === instrument && per === lead.per));
        if (beside.includes(undefined)) return [];
        const gives = [lead, ...(beside as Reading[])];
        return {
          instrument: caption,
          gives: gives.map((reading) => reading.id),
          ...(lead.per ? { row } : {}),
          drawing: draw(reader(sheet, gives, row), { id: `${id}-${lead.id}-${row}` }, form, words),
        };
      });
    });
}

/** Table after table, what is read in one row side by side. */
function rowByRow(readings: Readings, leads: readonly Reading[]): { lead: Reading; row: number }[] {
  const tables = [...new Set(leads.map(({ per }) => per))];
  return tables.flatMap((table) => {
    const columns = leads.filter(({ per }) => per === table);
    return rowsOf(readings, columns[0]!).flatMap((row) => columns.map((lead) => ({ lead, row })));
  });
}

const rowsOf = (readings: Readings, { id }: Reading) => [...[readings[id]!].flat().keys()];

function reader({ readings, form, decided }: DrawnSheet, gives: readonly Reading[], row: number): Reader {
  const of = (id: string) => {
    const column = [readings[id]!].flat();
    return column[column.length === 1 ? 0 : row]!;
  };
  const choice = decided.find(({ by }) => by === gives[0]!.id)?.choice;
  return { of, on: (instrument) => of(gives.find((reading) => reading.on === instrument)!.id), decides: () => (choice === undefined ? undefined : form[choice]) };
}
