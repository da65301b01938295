import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Bench, Hands } from './bench.ts';
import { quotient, scaled, tenTo, written } from './decimal.ts';
import { within } from './draw.ts';

/**
 * A screw gauge. Inside, openings are counted in least counts: on a scale of whole numbers the main-scale
 * reading is the turns, the circular division what is left of a turn, and no rule of the instrument can break.
 */
export interface ScrewGauge {
  /** Advance in one turn, in mm. */
  pitch: Written;
  /** Divisions on the circular scale. */
  divisions: number;
  /** Pitch ÷ divisions, in mm. */
  leastCount: Written;
  /** What it would show, finely read, with the jaws closed: in mm, positive when it shows too much. */
  zeroOffset: number;
  /** Error of the screw at an opening, in mm. */
  scaleError: number;
}

/** What is read with something between the jaws: total = main + division × least count, zero error not yet taken off. */
export interface GaugeReading {
  /** In mm, a whole number of pitches. */
  main: Written;
  /** The circular division at the reference line, 0 ≤ n < divisions. */
  division: number;
  /** In mm. */
  total: Written;
}

/**
 * What is read with the jaws closed. Short of the zero line of the main scale the error is positive, n least counts;
 * once the thimble's edge has passed it the error is negative, −(divisions − n) least counts.
 */
export interface ZeroReading {
  zero: 'at the line' | 'short of the line' | 'past the line';
  division: number;
  /** Zero error in mm with its sign, to be taken off every reading. */
  error: Written;
}

/** A gauge of the bench's kind without any error. */
export function idealScrewGauge({ screwGauge: { pitch, divisions } }: Bench): ScrewGauge {
  const leastCount = quotient(pitch, divisions);
  if (leastCount === undefined) throw new RangeError(`${divisions} divisions cannot share out a pitch of ${pitch} mm`);
  return { pitch, divisions, leastCount, zeroOffset: 0, scaleError: 0 };
}

/** A gauge of the bench's kind: its zero error one of the bench's list, as read; its true offset anywhere that reads so. */
export function makeScrewGauge(bench: Bench, random: Random): ScrewGauge {
  const ideal = idealScrewGauge(bench);
  const zero = Number(random.pick(bench.screwGauge.zeroErrors));
  return {
    ...ideal,
    zeroOffset: zero + within(Number(ideal.leastCount) / 2, random),
    scaleError: within(bench.screwGauge.limitOfError, random),
  };
}

/** Reads an opening in mm; the pressure of the screw differs a little each time. */
export function readGauge(gauge: ScrewGauge, bench: Bench, opening: number, hands: Hands, random: Random): GaugeReading {
  const spread = bench.hands[hands].screwGauge * random.normal();
  return gaugeShows(gauge, opening + gauge.zeroOffset + gauge.scaleError + spread);
}

/** What stands on the scales when the screw is at `position` mm from the zero line; never short of closed. */
export function gaugeShows(gauge: ScrewGauge, position: number): GaugeReading {
  const count = Math.max(0, counts(gauge, position));
  const turns = Math.floor(count / gauge.divisions);
  const pitch = scaled(gauge.pitch);
  return {
    main: written(turns * pitch.whole, pitch.decimals),
    division: count - turns * gauge.divisions,
    total: inMillimetres(gauge, count),
  };
}

/** Reads the gauge with its jaws closed. */
export function readZero(gauge: ScrewGauge): ZeroReading {
  const count = counts(gauge, gauge.zeroOffset);
  const turns = Math.floor(count / gauge.divisions);
  return {
    zero: count === 0 ? 'at the line' : count > 0 ? 'short of the line' : 'past the line',
    division: count - turns * gauge.divisions,
    error: inMillimetres(gauge, count),
  };
}

function counts({ leastCount }: ScrewGauge, position: number): number {
  const { whole, decimals } = scaled(leastCount);
  return Math.round((position * tenTo(decimals)) / whole);
}

function inMillimetres({ leastCount }: ScrewGauge, count: number): Written {
  const { whole, decimals } = scaled(leastCount);
  return written(count * whole, decimals);
}
