import { type ScrewGauge, makeScrewGauge, readZero } from '../apparatus/screw-gauge.ts';
import { acrossAt, makeWire } from '../apparatus/wire.ts';
import type { Program } from '../quantities/program.ts';
import type { PracticeSet } from './make-set.ts';

/** The screw gauge of a set with its wire: what it is closed on, and the readings that it gives. */
export interface GaugeBench {
  gauge: ScrewGauge;
  /** Divisions from the zero line at which the jaws touch the wire, by row of the table. */
  touching: number[];
  /** The same with nothing between the jaws; below zero where the gauge has passed its line. */
  closed: number;
  main: string;
  circular: string;
}

/** The gauge that the readings of a set were taken on; nothing where the set has none, or more than one. */
export function gaugeBench(program: Program, { sheet, ask, streams }: PracticeSet): GaugeBench | undefined {
  const on = (instrument: string) => program.steps.filter((step) => step.kind === 'reading' && step.on === instrument && !(step.id in sheet.conventions.drawn));
  const [mains, circulars, zeros] = [on('main scale'), on('circular scale'), on('closed jaws')];
  if (mains.length !== 1 || circulars.length !== 1 || zeros.length !== 1) return undefined;
  const { bench } = ask;
  const gauge = makeScrewGauge(bench, streams.of('screw gauge'));
  // An experiment that names its streams otherwise has another gauge; its zero gives it away.
  if (String(readZero(gauge).division) !== sheet.readings[zeros[0]!.id]) return undefined;
  const wire = makeWire(bench, ask.wire.made, ask.wire, streams.of('wire'));
  const random = streams.of('diameters');
  const rows = [sheet.readings[circulars[0]!.id]!].flat().length;
  const across = Array.from({ length: rows / 2 }, () => acrossAt(wire, random)).flat();
  const counts = (position: number) => Math.round(position / Number(gauge.leastCount));
  return {
    gauge,
    touching: across.map((opening) => counts(opening + gauge.zeroOffset + gauge.scaleError)),
    closed: counts(gauge.zeroOffset),
    main: mains[0]!.id,
    circular: circulars[0]!.id,
  };
}

/** Where the thimble stands so many divisions from the zero line: whole turns, and the division at the line. */
export function thimbleAt({ divisions }: ScrewGauge, count: number): { turns: number; division: number } {
  const turns = Math.floor(count / divisions);
  return { turns, division: count - turns * divisions };
}

/** Whether what a student wrote is what a gauge shows that stands so many divisions from its zero line, to a division. */
export function isShownOn(gauge: ScrewGauge, count: number, main: string, circular: string): boolean {
  const written = Number(main) / Number(gauge.leastCount) + Number(circular);
  const isMark = Math.abs(Number(main) / Number(gauge.pitch) - Math.round(Number(main) / Number(gauge.pitch))) < 1e-9;
  return main !== '' && circular !== '' && isMark && Math.abs(written - count) <= 1 && Number(circular) >= 0 && Number(circular) < gauge.divisions;
}
