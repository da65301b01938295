import type { Bench, Range } from '../apparatus/bench.ts';
import type { Limit } from '../quantities/uncertainty.ts';

const half = ([low, high]: Range) => (high - low) / 2;

/** What is common to all rows of the bridge table: the box's class, an end correction at either end, joints and leads. */
export function bridgeHalfWidths({ box, bridge }: Bench): Record<string, Limit> {
  const end: Limit = { absolute: half(bridge.endCorrection) };
  return {
    boxError: { absolute: box.tolerance },
    endLeft: end,
    endRight: end,
    contact: { absolute: half(bridge.joint) * bridge.jointsPerGap },
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
