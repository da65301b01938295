import type { Bench } from '../apparatus/bench.ts';
import type { Box } from '../apparatus/box.ts';
import { type Side, current, protectedBridge } from '../apparatus/bridge.ts';
import { scaled, wholeIn, written } from '../apparatus/decimal.ts';
import { type FaultName, faultNames, withFault } from '../apparatus/faults.ts';
import { bounded } from '../apparatus/numeric.ts';
import type { BoxName, Laid, Put, Shows, Surroundings } from '../experiments/on-bench.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';

/** A bench as the student meets it. */
export interface StudentBench {
  laid: Laid;
  /** Sizes of the kind of apparatus. */
  sizes: Bench;
  fault?: FaultName;
}

/** What the student has set. */
export interface Setting extends Surroundings {
  /** Which of the bench's pairs is in the gaps, and the gap that holds its first. */
  pair: number;
  firstIn: Side;
  /** Places of the plugs that are out, by box. */
  out: Readonly<Record<BoxName, ReadonlySet<number>>>;
  /** The jockey in mm from the left end of the scale. */
  millimetres: number;
  isPressed: boolean;
  isClosed: boolean;
  isProtected: boolean;
}

/** Boxes of a bench that matter with its pair in the gaps. */
export function boxesIn({ laid: { boxes, pairs } }: StudentBench, pair: number): BoxName[] {
  const { first, second } = pairs[pair]!;
  return (Object.keys(boxes) as BoxName[]).filter((name) => name === 'ratio arms' || name === first || name === second);
}

/** The resistance that stands in a box with these of its plugs out, with the digits of its finest plug. */
export function boxReads({ plugs }: Pick<Box, 'plugs'>, out: ReadonlySet<number>): Written {
  const decimals = Math.max(...plugs.map((plug) => scaled(plug).decimals));
  return written([...out].reduce((sum, place) => sum + wholeIn(plugs[place]!, decimals), 0), decimals);
}

/** What an instrument shows, in the units of its scale; for a box in Ω. */
export function shown(bench: StudentBench, setting: Setting, by: Shows): Written {
  switch (by) {
    case 'scale':
      return written(setting.millimetres, 1);
    case 'rule':
      return written(Math.round(10 * setting.length), 1);
    case 'thermometer':
      return written(Math.round(thermometerAt(bench, setting)), 0);
    default:
      return boxReads(bench.laid.boxes[by]![0]!, setting.out[by]);
  }
}

/** Where the thread of the thermometer ends, in °C. */
export const thermometerAt = ({ laid: { bath } }: StudentBench, { celsius }: Surroundings) => celsius + (bath?.thermometerError ?? 0);

/** Where the needle stands, in divisions to the right of its zero, at its stop where it would go farther. It needs a closed key, and but for a galvanometer in a gap a pressed jockey. */
export function needle({ laid, sizes }: StudentBench, setting: Setting): number {
  const { pair, firstIn, isPressed, isClosed, isProtected, millimetres, out } = setting;
  if (!isClosed || !(isPressed || laid.isInGap)) return 0;
  const { first, second } = laid.pairs[pair]!;
  const boxes = (name: BoxName) => laid.boxes[name]!.map((box) => boxOhms(box, out[name]));
  const ohms = (put: Put) => (typeof put === 'string' ? boxes(put)[0]! : put.ohms(setting));
  const gaps = firstIn === 'left' ? { left: ohms(first), right: ohms(second) } : { left: ohms(second), right: ohms(first) };
  const bridge = isProtected ? protectedBridge(laid.bridge, sizes) : laid.bridge;
  const flows = laid.flows ?? (({ jockey }) => current(bridge, gaps, jockey));
  const { divisions, perDivision } = bridge.galvanometer;
  return bounded(flows({ bridge, firstIn, gaps, boxes, jockey: millimetres / 10, isPressed }) / perDivision, -divisions, divisions);
}

/** The true resistance of a box in Ω, with these of its plugs out. */
function boxOhms(box: Box, out: ReadonlySet<number>): number {
  const coils = Number(boxReads(box, out)) * (1 + box.error);
  return box.contacts.reduce((sum, contact, place) => (out.has(place) ? sum : sum + contact), coils);
}

/** The same bench with something wrong in its connections, drawn from a stream. */
export function faulty(bench: StudentBench, random: Random): StudentBench {
  const fault = random.pick(faultNames);
  return { ...bench, fault, laid: { ...bench.laid, bridge: withFault(bench.laid.bridge, fault, bench.sizes, random) } };
}
