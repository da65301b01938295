import type { Bench } from '../apparatus/bench.ts';
import type { Written } from '../quantities/step.ts';
import type { Ask } from './ask.ts';
import { idealNull, planBridge } from './bridge-plan.ts';
import { type Plan, isFit } from './plan.ts';

/** A change to the apparatus that would do, with the plan that it gives. */
export type Alternative =
  | { change: 'length'; centimetres: number; plan: Plan }
  | { change: 'diameter'; gauge: string; plan: Plan }
  | { change: 'length and diameter'; centimetres: number; gauge: string; plan: Plan }
  | { change: 'box'; plugs: readonly Written[]; plan: Plan }
  | { change: 'window'; window: readonly [number, number]; plan: Plan }
  | { change: 'interchange'; settings: { R: Written; direct: number; interchanged: number }[] };

/** A thinner or thicker wire to offer. */
export interface OfferedGauge {
  gauge: string;
  diameter: number;
}

/** Longer than a metre and a half is awkward on a bench; common practice, no source. */
const LONGEST = 150;
const SHORTEST = 20;
const LONG = 100;
const FEWEST_ROWS = 3;
const BOXES: readonly (readonly Written[])[] = [
  ['0.1', '0.2', '0.2', '0.5', '1', '2', '2', '5', '10', '20'],
  ['0.01', '0.02', '0.02', '0.05', '0.1', '0.2', '0.2', '0.5', '1', '2', '2', '5'],
  ['1', '2', '2', '5', '10', '20', '20', '50', '100'],
];
const WINDOWS: readonly (readonly [number, number])[] = [
  [35, 65],
  [30, 70],
];

/** Changes, one at a time, after which the experiment can be done; of several wires the first is changed. */
export function alternatives(ask: Ask, gauges: readonly OfferedGauge[], planned: (ask: Ask) => Plan): Alternative[] {
  const enough = (changed: Partial<Ask>) => {
    const plan = planned({ ...ask, ...changed });
    return isFit(plan) ? plan : undefined;
  };
  const first = <T, A>(list: readonly T[], tried: (one: T) => A | undefined): A[] => {
    for (const one of list) {
      const found = tried(one);
      if (found) return [found];
    }
    return [];
  };
  const withWire = (wire: Partial<Ask['wire']>) => enough({ wire: { ...ask.wire, ...wire } });
  return [
    ...first(lengths(ask.wire.length), (length) => offer(withWire({ length }), (plan) => ({ change: 'length' as const, centimetres: length, plan }))),
    ...first(nearestFirst(gauges, ask.wire.diameter), ({ gauge, diameter }) =>
      offer(withWire({ diameter }), (plan) => ({ change: 'diameter' as const, gauge, plan })),
    ),
    ...thinnerAndLonger(ask, gauges, withWire),
    ...first(BOXES, (plugs) => offer(enough({ bench: withPlugs(ask.bench, plugs) }), (plan) => ({ change: 'box' as const, plugs, plan }))),
    ...first(WINDOWS, (window) => offer(enough({ window }), (plan) => ({ change: 'window' as const, window, plan }))),
    ...(ask.others.length === 0 ? interchanged(ask) : []),
  ];
}

const withPlugs = (bench: Bench, plugs: readonly Written[]): Bench => ({ ...bench, box: { ...bench.box, plugs: [...plugs] } });

const offer = <A>(plan: Plan | undefined, as: (plan: Plan) => A): A | undefined => plan && as(plan);

/** Nearest lengths first, in steps of 5 cm. */
function lengths(from: number): number[] {
  const all: number[] = [];
  for (let length = SHORTEST; length <= LONGEST; length += 5) all.push(length);
  return all.sort((a, b) => Math.abs(a - from) - Math.abs(b - from));
}

function nearestFirst(gauges: readonly OfferedGauge[], diameter: number): OfferedGauge[] {
  return [...gauges].sort((a, b) => Math.abs(a.diameter - diameter) - Math.abs(b.diameter - diameter));
}

/** A metre of the thickest wire that does: for a wire so thick that a thinner one alone would be hard to gauge. */
function thinnerAndLonger(ask: Ask, gauges: readonly OfferedGauge[], withWire: (wire: Partial<Ask['wire']>) => Plan | undefined): Alternative[] {
  if (ask.wire.length >= LONG) return [];
  const thinner = gauges.filter(({ diameter }) => diameter < ask.wire.diameter).sort((a, b) => b.diameter - a.diameter);
  const found = thinner.find(({ diameter }) => withWire({ diameter, length: LONG }));
  const plan = found && withWire({ diameter: found.diameter, length: LONG });
  return found && plan ? [{ change: 'length and diameter', centimetres: LONG, gauge: found.gauge, plan }] : [];
}

/** Each setting used twice, once in either gap, makes two rows of one: half as many settings do, but no table has fewer rows than an order allows. */
function interchanged(ask: Ask): Alternative[] {
  const { X, usable } = planBridge(ask);
  const settings = usable.map(({ R, l }) => ({ R, direct: l, interchanged: 100 - idealNull(ask.known, Number(R), X) }));
  const [low, high] = ask.window;
  const both = settings.filter(({ interchanged: l }) => l >= low && l <= high);
  return both.length >= Math.max(FEWEST_ROWS, ask.rows / 2) ? [{ change: 'interchange', settings: both }] : [];
}
