import type { Bench, Range } from '../apparatus/bench.ts';
import type { Limit } from '../quantities/uncertainty.ts';

const half = ([low, high]: Range) => (high - low) / 2;

/** Limits of several independent effects that add up: their standard uncertainties add in quadrature (JCGM 100:2008, 5.1.2). */
const together = (one: number, times: number) => one * Math.sqrt(times);

/**
 * What is common to all rows of the bridge table: the box's class, an end correction at either end, the zero of the scale,
 * the bow of an uneven wire, and the joints by which one gap differs from the other. The contacts of the plugs are not here:
 * they change from row to row and are in the scatter.
 */
export function bridgeHalfWidths({ box, bridge }: Bench): Record<string, Limit> {
  const end: Limit = { absolute: half(bridge.endCorrection) };
  return {
    boxError: { absolute: box.tolerance },
    endLeft: end,
    endRight: end,
    scaleZero: { absolute: half(bridge.scaleOffset) },
    uneven: { absolute: bridge.unevenness },
    contact: { absolute: together(half(bridge.joint), 2 * bridge.jointsPerGap) },
  };
}

/** The screw gauge's limit of error, and its resolution twice: in the zero reading and in the wire's. */
export function gaugeHalfWidths({ screwGauge }: Bench): Record<string, Limit> {
  const leastCount = Number(screwGauge.pitch) / screwGauge.divisions;
  return {
    gaugeError: { absolute: screwGauge.limitOfError },
    gaugeStep: { absolute: leastCount / 2 },
    n0: { absolute: 0.5 },
  };
}

/** A length is read at both its ends, each to half a division. */
export function ruleHalfWidths({ rule }: Bench): Record<string, Limit> {
  return { L: { absolute: together(Number(rule.division) / 2, 2) } };
}
