import type { Bench } from '../apparatus/bench.ts';
import { boxValues } from '../apparatus/box.ts';
import { makeBridge } from '../apparatus/bridge.ts';
import { deadBand } from '../apparatus/null.ts';
import { type ScrewGauge, makeScrewGauge } from '../apparatus/screw-gauge.ts';
import type { Written } from '../quantities/step.ts';
import { type Streams, streams } from '../random.ts';
import type { StudentBench } from './bench.ts';

/** Sizes of what is tried, made up for the page: two wires in Ω, a diameter in mm, a length in cm, a temperature in °C. */
const WIRES = [1.5, 7] as const;
const DIAMETERS = [0.3, 2.4] as const;
const LENGTHS = [32, 90] as const;
const TEMPERATURES = [12, 92] as const;

/** The streams of the instruments that are tried alone: the same number gives the same again. */
export const tried = (number: number): Streams => streams('instruments').within(number);

/** A bridge with a wire in either gap, to find a null point on. */
export function bridgeAlone(sizes: Bench, own: Streams): StudentBench {
  const random = own.of('wires');
  const [one, other] = [random.between(...WIRES), random.between(...WIRES)];
  const pair = { first: { name: 'One', ohms: () => one }, second: { name: 'Two', ohms: () => other }, taken: [] };
  return { sizes, laid: { bridge: makeBridge(sizes, own.of('bridge')), boxes: {}, pairs: [pair] } };
}

/** Whether a reading of the scale in cm lies, to a division, where no current is seen with the first wire on the left. */
export function isNull({ laid: { bridge, pairs } }: StudentBench, l: number): boolean {
  const [{ first, second }] = pairs as unknown as [{ first: { ohms(): number }; second: { ohms(): number } }];
  const [low, high] = deadBand(bridge, { left: first.ohms(), right: second.ohms() });
  return l >= low - 0.1 && l <= high + 0.1;
}

/** A resistance to be set on a box, in Ω. */
export const ohmsToSet = (plugs: readonly Written[], own: Streams): Written => own.of('ohms').pick(boxValues(plugs));

/** A screw gauge with a wire between its jaws, which it touches at so many divisions. */
export function gaugeAlone(sizes: Bench, own: Streams): { gauge: ScrewGauge; touching: number } {
  const gauge = makeScrewGauge(sizes, own.of('screw gauge'));
  return { gauge, touching: Math.round((own.of('diameter').between(...DIAMETERS) + gauge.zeroOffset) / Number(gauge.leastCount)) };
}

/** A length in cm between two terminals, at a division. */
export const lengthAlone = (own: Streams): number => Math.round(10 * own.of('length').between(...LENGTHS)) / 10;

/** A temperature in °C, anywhere between the divisions. */
export const celsiusAlone = (own: Streams): number => own.of('temperature').between(...TEMPERATURES);
