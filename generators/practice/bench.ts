import { type Box, boxResistance, makeBox } from '../apparatus/box.ts';
import { type Bridge, type Gaps, deflection, makeBridge, protectedBridge } from '../apparatus/bridge.ts';
import { type FaultName, faultNames, withFault } from '../apparatus/faults.ts';
import { written } from '../apparatus/decimal.ts';
import type { Program } from '../quantities/program.ts';
import type { Written } from '../quantities/step.ts';
import type { PracticeSet } from './make-set.ts';

/** The readings of a table that are taken on a bench with one resistance box and one null point a row. */
export interface BenchReadings {
  box: string;
  scale: string;
  rows: number;
}

/** The readings that the bench of a set gives; nothing where its experiment is done otherwise. */
export function benchReadings(program: Program, { sheet, truth }: PracticeSet): BenchReadings | undefined {
  const on = (instrument: string) => program.steps.filter((step) => step.kind === 'reading' && step.on === instrument);
  const [boxes, scales] = [on('box'), on('scale')];
  const [box] = boxes;
  const [scale] = scales;
  const isOne = boxes.length === 1 && scales.length === 1 && truth['X'] !== undefined && sheet.form['known'] !== undefined;
  if (!isOne || box!.id in sheet.conventions.drawn || scale!.id in sheet.conventions.drawn) return undefined;
  return { box: box!.id, scale: scale!.id, rows: [sheet.readings[scale!.id]!].flat().length };
}

/** A bridge with its box and the unknown resistance, as they are on the bench of a set. */
export interface SetBench {
  set: PracticeSet;
  bridge: Bridge;
  box: Box;
  fault?: FaultName;
}

/** The bench of a set: the very bridge and box that its readings were taken on; or one with a fault in its connections. */
export function benchOf(set: PracticeSet, faulty = false): SetBench {
  const { streams, ask } = set;
  const bridge = makeBridge(ask.bench, streams.of('bridge'));
  const box = makeBox(ask.bench, streams.of('box'));
  if (!faulty) return { set, bridge, box };
  const random = streams.of('fault');
  const fault = random.pick(faultNames);
  return { set, bridge: withFault(bridge, fault, ask.bench, random), box, fault };
}

/** What the student has set. */
export interface Setting {
  /** Places of the plugs that are out. */
  out: ReadonlySet<number>;
  /** The jockey in mm from the left end of the scale. */
  millimetres: number;
  isPressed: boolean;
  isClosed: boolean;
  isProtected: boolean;
}

/** The resistance that stands in the box, as it is written down. */
export function boxReads({ box }: SetBench, out: ReadonlySet<number>): Written {
  const tenths = [...out].reduce((sum, place) => sum + Math.round(Number(box.plugs[place]) * 100), 0);
  return tenths % 10 === 0 ? written(tenths / 10, 1) : written(tenths, 2);
}

/** The null point as the scale reads it, with the jockey where it is. */
export const scaleReads = (millimetres: number): Written => written(millimetres, 1);

/** Where the needle stands, in divisions to the right of its zero: only with the key closed and the jockey pressed; at its stop where it would go farther. */
export function needle(bench: SetBench, setting: Setting): number {
  if (!setting.isPressed || !setting.isClosed) return 0;
  const { set, bridge, box } = bench;
  const connected = setting.isProtected ? protectedBridge(bridge, set.ask.bench) : bridge;
  const { divisions } = connected.galvanometer;
  return Math.max(-divisions, Math.min(divisions, deflection(connected, gaps(set, box, boxReads(bench, setting.out)), setting.millimetres / 10)));
}

function gaps({ ask, truth }: PracticeSet, box: Box, R: Written): Gaps {
  const put = Number(R) === 0 ? box.contacts.reduce((sum, contact) => sum + contact, 0) : boxResistance(box, R);
  return ask.known === 'left' ? { left: put, right: truth['X']! } : { left: truth['X']!, right: put };
}

/** The set with the student's own readings in place of those that were printed, by place: 'R:0'. */
export function withOwnReadings(set: PracticeSet, own: Readonly<Record<string, string>>): PracticeSet {
  const { sheet } = set;
  const readings = Object.entries(sheet.readings).map(([id, printed]) => {
    const column = [printed].flat().map((each, row) => own[`${id}:${row}`] ?? each);
    return [id, Array.isArray(printed) ? column : column[0]!] as const;
  });
  return { ...set, sheet: { ...sheet, readings: Object.fromEntries(readings) } };
}
